// The words that people read, out of sources, documents, specs and samples.
#ifndef TILLWRIGHT_TESTS_SAMPLES_PROSE_H_
#define TILLWRIGHT_TESTS_SAMPLES_PROSE_H_

#include <string>
#include <string_view>
#include <vector>

namespace tillwright::testing {

// The string literals of C++ source, those that follow one another joined; no comments, no
// includes.
[[nodiscard]] std::vector<std::string> LiteralsIn(std::string_view source);

// The comments of a spec: what follows "//" outside of a text, a line each.
[[nodiscard]] std::vector<std::string> CommentsIn(std::string_view spec);

// What stands between the tags of SVG or HTML.
[[nodiscard]] std::vector<std::string> TextsIn(std::string_view markup);

// Which words of the list are in the text, case aside, each as a whole word or phrase; a word that
// ends in '*' is also found where it only begins a word. Phrases of `allowed` are passed over.
[[nodiscard]] std::vector<std::string> WordsFound(std::string text,
                                                  const std::vector<std::string>& words,
                                                  const std::vector<std::string>& allowed);

}  // namespace tillwright::testing

#endif  // TILLWRIGHT_TESTS_SAMPLES_PROSE_H_
