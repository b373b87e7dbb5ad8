// Viewer preferences in a finished PDF.
//
// Cairo has no way to say "print at actual size, one-sided". Its PDF ends with the catalog object,
// a classic cross-reference table and the trailer, so a few bytes put into the catalog only move
// what comes after it: the table itself and the one number that points to it.
#ifndef TILLWRIGHT_RENDER_PDF_CATALOG_H_
#define TILLWRIGHT_RENDER_PDF_CATALOG_H_

#include <string>

namespace tillwright {

// Adds /ViewerPreferences << /PrintScaling /None /Duplex /Simplex /PickTrayByPDFSize true
// /DisplayDocTitle true >> (ISO 32000-1, 12.2) to the catalog. Returns false and leaves the bytes
// alone when the file is not built as expected: catalog last and without preferences of its own,
// followed by a classic table whose offset startxref gives.
[[nodiscard]] bool AskForActualSize(std::string& pdf);

}  // namespace tillwright

#endif  // TILLWRIGHT_RENDER_PDF_CATALOG_H_
