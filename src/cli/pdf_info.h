// How every PDF of a bank is titled.
#ifndef TILLWRIGHT_CLI_PDF_INFO_H_
#define TILLWRIGHT_CLI_PDF_INFO_H_

#include <string>
#include <utility>

#include "tillwright/bank.h"
#include "tillwright/render.h"

namespace tillwright {

[[nodiscard]] inline PdfInfo PdfInfoOf(const Bank& bank, std::string subject) {
  PdfInfo info;
  info.title = bank.title.empty() ? "Drawer bank" : bank.title;
  info.subject = std::move(subject);
  return info;
}

}  // namespace tillwright

#endif  // TILLWRIGHT_CLI_PDF_INFO_H_
