// The keys of the case in the result.
#ifndef TILLWRIGHT_WRITE_CASE_KEYS_H_
#define TILLWRIGHT_WRITE_CASE_KEYS_H_

#include "tillwright/bank.h"
#include "write/json_text.h"

namespace tillwright {

// "case": { … }. REQUIRES: a bank with a case.
void AddCaseKeys(JsonText& json, const Bank& bank);

}  // namespace tillwright

#endif  // TILLWRIGHT_WRITE_CASE_KEYS_H_
