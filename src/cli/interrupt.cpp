#include "cli/interrupt.h"

#include <fcntl.h>
#include <unistd.h>

#include <array>
#include <atomic>

namespace tillwright {
namespace {

struct Slot {
  std::atomic<bool> used{false};
  std::atomic<int> count{0};
  int folder = -1;
  int own = -1;
  const char* name = nullptr;
};

// A handler can be given nothing: this is the one place that must be known everywhere.
std::array<Slot, 8> slots;                    // NOLINT: see above
std::array<struct sigaction, 3> old_actions;  // NOLINT

constexpr std::array kSignals{SIGINT, SIGTERM, SIGHUP};
static_assert(std::atomic<int>::is_always_lock_free && std::atomic<bool>::is_always_lock_free);

// Only calls that POSIX allows in a handler.
void RemoveFiles(const Slot& slot) {
  for (int i = 0, count = slot.count; i < count; ++i) {
    std::array<char, 12> digits{};
    std::size_t at = digits.size() - 1;
    int rest = i;
    do {
      digits[--at] = static_cast<char>('0' + rest % 10);
      rest /= 10;
    } while (rest > 0);
    ::unlinkat(slot.own, digits.data() + at, 0);
  }
  ::unlinkat(slot.folder, slot.name, AT_REMOVEDIR);
}

void OnInterrupt(int signal) {
  for (const Slot& slot : slots) {
    if (slot.used) RemoveFiles(slot);
  }
  for (std::size_t i = 0; i < kSignals.size(); ++i) {
    if (kSignals[i] == signal) ::sigaction(signal, &old_actions[i], nullptr);
  }
  ::raise(signal);
}

bool AnyUsed() {
  for (const Slot& slot : slots) {
    if (slot.used) return true;
  }
  return false;
}

void Listen() {
  struct sigaction action {};
  action.sa_handler = OnInterrupt;
  sigfillset(&action.sa_mask);
  for (std::size_t i = 0; i < kSignals.size(); ++i) {
    ::sigaction(kSignals[i], &action, &old_actions[i]);
    // What was ignored when the program began (nohup) stays ignored.
    if (old_actions[i].sa_handler == SIG_IGN) {
      ::sigaction(kSignals[i], &old_actions[i], nullptr);
    }
  }
}

}  // namespace

int TakeInterruptSlot(int folder, int own, const char* name) {
  const bool first = !AnyUsed();
  for (std::size_t i = 0; i < slots.size(); ++i) {
    Slot& slot = slots[i];
    if (slot.used) continue;
    slot.folder = folder;
    slot.own = own;
    slot.name = name;
    slot.count = 0;
    slot.used = true;
    if (first) Listen();
    return static_cast<int>(i);
  }
  return -1;
}

void CountInterruptFile(int slot) {
  if (slot >= 0) ++slots[static_cast<std::size_t>(slot)].count;
}

void GiveBackInterruptSlot(int slot) {
  if (slot < 0) return;
  slots[static_cast<std::size_t>(slot)].used = false;
  if (AnyUsed()) return;
  for (std::size_t i = 0; i < kSignals.size(); ++i) {
    ::sigaction(kSignals[i], &old_actions[i], nullptr);
  }
}

HoldInterrupts::HoldInterrupts() {
  sigset_t held;
  sigemptyset(&held);
  for (const int signal : kSignals) sigaddset(&held, signal);
  ::sigprocmask(SIG_BLOCK, &held, &before_);
}

HoldInterrupts::~HoldInterrupts() { ::sigprocmask(SIG_SETMASK, &before_, nullptr); }

}  // namespace tillwright
