// The commands, one file each: COMMAND_command.cpp.
#ifndef TILLWRIGHT_CLI_COMMANDS_H_
#define TILLWRIGHT_CLI_COMMANDS_H_

#include "cli/program.h"

namespace tillwright {

ExitStatus SizeCommand(Program& program);
ExitStatus CheckCommand(Program& program);
ExitStatus DrawCommand(Program& program);
ExitStatus ShopCommand(Program& program);
ExitStatus PartsCommand(Program& program);
ExitStatus StickCommand(Program& program);
ExitStatus StockCommand(Program& program);
ExitStatus WhyCommand(Program& program);

}  // namespace tillwright

#endif  // TILLWRIGHT_CLI_COMMANDS_H_
