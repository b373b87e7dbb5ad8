// How every PDF of a bank is titled.
#ifndef TILLWRIGHT_CLI_PDF_INFO_H_
#define TILLWRIGHT_CLI_PDF_INFO_H_

#include <string>
#include <utility>

#include "bank/headings.h"
#include "tillwright/bank.h"
#include "tillwright/render.h"

namespace tillwright {

[[nodiscard]] inline PdfInfo PdfInfoOf(const std::string& title, std::string subject) {
  PdfInfo info;
  info.title = TitleOr(title);
  info.subject = std::move(subject);
  return info;
}
[[nodiscard]] inline PdfInfo PdfInfoOf(const Bank& bank, std::string subject) {
  return PdfInfoOf(bank.title, std::move(subject));
}

}  // namespace tillwright

#endif  // TILLWRIGHT_CLI_PDF_INFO_H_
