#include "draw/stick_reading.h"

#include <gtest/gtest.h>

#include <array>
#include <cctype>
#include <cstdlib>

#include "render/tools.h"

namespace tillwright::testing {
namespace {

constexpr double kMmPerPoint = 25.4 / 72;  // PDF 32000-1:2008, 8.3.2.3: a unit is 1/72 in

// Words of a content stream: numbers, names, operators; strings come as one word.
class Words {
 public:
  explicit Words(std::string_view text) : text_(text) {}

  bool Next(std::string& word) {
    while (at_ < text_.size() && IsBlank(text_[at_])) ++at_;
    if (at_ >= text_.size()) return false;
    const std::size_t begin = at_;
    if (text_[at_] == '(') {
      SkipString();
    } else if (text_[at_] == '[' || text_[at_] == ']') {
      ++at_;
    } else {
      while (at_ < text_.size() && !IsBlank(text_[at_]) && text_[at_] != '(' && text_[at_] != '[' &&
             text_[at_] != ']') {
        ++at_;
      }
    }
    word = text_.substr(begin, at_ - begin);
    return true;
  }

 private:
  static bool IsBlank(char c) { return c == ' ' || c == '\n' || c == '\r' || c == '\t'; }

  void SkipString() {
    int depth = 0;
    do {
      const char c = text_[at_++];
      if (c == '\\') ++at_;
      if (c == '(') ++depth;
      if (c == ')') --depth;
    } while (depth > 0 && at_ < text_.size());
  }

  std::string_view text_;
  std::size_t at_ = 0;
};

using Matrix = std::array<double, 6>;

Matrix Times(const Matrix& a, const Matrix& b) {  // first a, then b
  return {a[0] * b[0] + a[1] * b[2],        a[0] * b[1] + a[1] * b[3],
          a[2] * b[0] + a[3] * b[2],        a[2] * b[1] + a[3] * b[3],
          a[4] * b[0] + a[5] * b[2] + b[4], a[4] * b[1] + a[5] * b[3] + b[5]};
}

// Runs a content stream and keeps what it strokes.
class Interpreter {
 public:
  explicit Interpreter(DrawnPage& page) : page_(page) {}

  void Run(std::string_view stream) {
    Words words(stream);
    std::string word;
    while (words.Next(word)) {
      char* end = nullptr;
      const double number = std::strtod(word.c_str(), &end);
      if (end == word.c_str() + word.size()) {
        numbers_.push_back(number);
      } else if (word != "[" && word != "]") {
        Do(word);
        numbers_.clear();
      }
    }
  }

 private:
  void Do(const std::string& op) {
    if (op == "q") stack_.push_back(matrix_);
    if (op == "Q") {
      matrix_ = stack_.back();
      stack_.pop_back();
    }
    if (op == "cm") matrix_ = Times(Last6(), matrix_);
    if (op == "m") start_ = at_ = Point();
    if (op == "l") LineTo(Point());
    if (op == "c") at_ = Point();  // curves are not read
    if (op == "h") LineTo(start_);
    if (op == "S") page_.lines.insert(page_.lines.end(), path_.begin(), path_.end());
    if (op == "S" || op == "f" || op == "f*" || op == "n" || op == "B" || op == "B*") path_.clear();
  }

  void LineTo(PaperPoint to) {
    path_.push_back({at_, to});
    at_ = to;
  }

  [[nodiscard]] Matrix Last6() const {
    Matrix m{};
    std::copy(numbers_.end() - 6, numbers_.end(), m.begin());
    return m;
  }

  [[nodiscard]] PaperPoint Point() const {
    const double x = numbers_[numbers_.size() - 2];
    const double y = numbers_.back();
    const double px = x * matrix_[0] + y * matrix_[2] + matrix_[4];
    const double py = x * matrix_[1] + y * matrix_[3] + matrix_[5];
    return {px * kMmPerPoint, page_.height - py * kMmPerPoint};
  }

  DrawnPage& page_;
  Matrix matrix_{1, 0, 0, 1, 0, 0};
  std::vector<Matrix> stack_;
  std::vector<double> numbers_;
  std::vector<PaperSegment> path_;
  PaperPoint at_, start_;
};

}  // namespace

std::string Unpacked(const std::string& pdf) {
  const TempFile in(".pdf", pdf);
  const TempFile out(".qdf", "");
  const ToolRun run =
      RunTool("qpdf --qdf --object-streams=disable " + in.path() + " " + out.path());
  EXPECT_EQ(run.status, 0) << run.output;
  return out.Read();
}

std::vector<DrawnPage> ReadPages(const std::string& unpacked) {
  std::vector<DrawnPage> pages;
  for (int number = 1;; ++number) {
    const std::string count = std::to_string(number) + "\n";
    const std::size_t object = unpacked.find("%% Page " + count);
    const std::size_t contents = unpacked.find("%% Contents for page " + count);
    if (object == std::string::npos || contents == std::string::npos) return pages;
    DrawnPage& page = pages.emplace_back();
    Words box(std::string_view(unpacked).substr(unpacked.find("/MediaBox", object) + 9, 200));
    std::string word;
    std::vector<double> numbers;
    while (numbers.size() < 4 && box.Next(word)) {
      if (word != "[") numbers.push_back(std::atof(word.c_str()));
    }
    page.width = numbers.at(2) * kMmPerPoint;
    page.height = numbers.at(3) * kMmPerPoint;
    const std::size_t begin = unpacked.find("stream\n", contents) + 7;
    const std::size_t end = unpacked.find("endstream", begin);
    Interpreter(page).Run(std::string_view(unpacked).substr(begin, end - begin));
  }
}

}  // namespace tillwright::testing
