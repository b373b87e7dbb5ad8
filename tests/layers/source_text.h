// A reader of C++ sources as this house writes them, simple enough to be looked through: no
// preprocessor, no types. It takes out comments, the insides of literals and preprocessor lines,
// and then walks the braces.
//
// What opens a brace outside functions is told by the words before it, back to the last ';', '}',
// '{' or access specifier: `namespace` and `extern` go on inside; `class`, `struct` and `union` go
// on inside; `enum` and what ends in no parameter list are skipped as initializers; a parameter
// list with nothing after it but qualifiers, a return type or a constructor's initializers is a
// function, and so is a lambda that a name outside functions is given.
//
// A function's lines are those from the first word of its head (with `template`) to its closing
// brace, both counted, with the empty ones, the comments and the lambdas within.
#ifndef TILLWRIGHT_TESTS_LAYERS_SOURCE_TEXT_H_
#define TILLWRIGHT_TESTS_LAYERS_SOURCE_TEXT_H_

#include <string>
#include <string_view>
#include <vector>

namespace tillwright::testing {

// The text with blanks for comments, for the insides of texts, characters and raw texts, and,
// unless they are kept, for preprocessor lines; every line keeps its number.
[[nodiscard]] std::string Bare(std::string_view text, bool keep_directives = false);

struct FunctionLines {
  std::string head;  // its first line
  int first = 0;     // from 1
  int lines = 0;
};
[[nodiscard]] std::vector<FunctionLines> FunctionsIn(std::string_view text);

// What its #include "…" lines name.
[[nodiscard]] std::vector<std::string> OwnIncludes(std::string_view text);

// How often an enumerator of `name` stands in the text, as Name::kAny; of these, how often beside
// == or !=, or as a case.
struct NamedKinds {
  int compared = 0;
  int all = 0;
};
[[nodiscard]] NamedKinds CountKinds(std::string_view text, std::string_view name);

// The enumerators of `enum class name`, in order; none where the text has no such.
[[nodiscard]] std::vector<std::string> EnumeratorsOf(std::string_view text, std::string_view name);

}  // namespace tillwright::testing

#endif  // TILLWRIGHT_TESTS_LAYERS_SOURCE_TEXT_H_
