// Does nothing, but is linked to everything the program is linked to: what start-up alone costs.
#include <string_view>

#include "cli/app.h"
#include "cli/files.h"

int main(int argc, char** argv) {
  // Never true when measured; keeps the libraries linked.
  if (argc > 1 && std::string_view(argv[1]) == "run") {
    tillwright::Console console;
    tillwright::SystemFiles files;
    return static_cast<int>(tillwright::Run({}, console, files));
  }
  return 0;
}
