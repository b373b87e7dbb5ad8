// The page of a shop packet: one HTML file with the whole job on it, for a phone, a screen or
// paper, that needs nothing but the files beside it.
#ifndef TILLWRIGHT_WRITE_PACKET_H_
#define TILLWRIGHT_WRITE_PACKET_H_

#include <string>
#include <string_view>
#include <vector>

#include "tillwright/bank.h"
#include "tillwright/check.h"
#include "write/bank_tables.h"

namespace tillwright {

struct PacketPicture {
  std::string svg;  // an svg element as it goes into a page
  std::string caption;
  std::string file;     // the same as a file of the packet; empty when there is none
  double width_mm = 0;  // on paper
};

struct PacketFile {
  std::string path;   // from the page's folder
  std::string about;  // what it is and what to do with it
};

// One part of the page: words, then pictures, then tables, then files.
struct PacketSection {
  std::string id;  // of the section, for links: letters only
  std::string heading;
  std::vector<std::string> lines;
  std::vector<PacketPicture> pictures;
  std::vector<BankTable> tables;
  std::vector<std::string> notes;  // below the tables
  std::vector<PacketFile> files;
};

// The page: title, checks, cautions, the sections as given, then the steps in working order.
// `picture_style` is what the pictures ask of the page's style sheet.
[[nodiscard]] std::string PacketPage(const Bank& bank, const std::vector<Finding>& findings,
                                     const std::vector<PacketSection>& sections,
                                     std::string_view picture_style);

}  // namespace tillwright

#endif  // TILLWRIGHT_WRITE_PACKET_H_
