// What must be taken away when the program is interrupted. Safe to read inside a signal handler.
#ifndef TILLWRIGHT_CLI_INTERRUPT_H_
#define TILLWRIGHT_CLI_INTERRUPT_H_

#include <signal.h>

namespace tillwright {

// Until it is given back, an interrupt removes the files "0", "1" … below `own`, then the folder
// `name` below `folder`, then lets the signal do what it would have done. -1 when there are too
// many at once: these are left to the next run.
[[nodiscard]] int TakeInterruptSlot(int folder, int own, const char* name);
void CountInterruptFile(int slot);
void GiveBackInterruptSlot(int slot);

// Holds interrupts back while it lives: what has begun to be moved into place arrives whole.
class HoldInterrupts {
 public:
  HoldInterrupts();
  ~HoldInterrupts();
  HoldInterrupts(const HoldInterrupts&) = delete;
  HoldInterrupts& operator=(const HoldInterrupts&) = delete;

 private:
  sigset_t before_;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_CLI_INTERRUPT_H_
