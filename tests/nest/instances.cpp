#include "nest/instances.h"

#include <cstdlib>
#include <sstream>

namespace tillwright::testing {
namespace {

Length Read(std::istream& in) {
  std::int64_t n = 0;
  in >> n;
  return Length::Millimeters(n);
}

void ReadKerf(const std::string& comment, NestJob& job) {
  const std::size_t at = comment.find("kerf ");
  if (at != std::string::npos) {
    job.kerf = Length::Millimeters(std::atoll(comment.c_str() + at + 5));
  }
}

void ReadLine(const std::string& line, NestJob& job) {
  std::istringstream in(line);
  std::string word;
  in >> word;
  if (word == "#") ReadKerf(line, job);
  if (word == "sheet") {
    const Length along = Read(in);
    job.stock.push_back({.label = line, .along = along, .across = Read(in)});
  } else if (word == "item") {
    NestPart part{.label = line, .along = Read(in)};
    part.across = Read(in);
    in >> part.count >> part.may_turn;
    job.parts.push_back(part);
  } else if (word == "board") {
    job.stock.push_back({.label = line, .along = Read(in), .across = Length::Millimeters(1)});
  } else if (word == "part") {
    NestPart part{.label = line, .along = Read(in), .across = Length::Millimeters(1)};
    in >> part.count;
    job.parts.push_back(part);
  }
}

}  // namespace

NestJob ReadInstance(std::string_view text, Turning turning) {
  NestJob job;
  std::istringstream in{std::string(text)};
  for (std::string line; std::getline(in, line);) ReadLine(line, job);
  if (turning == Turning::kAsGiven || !job.kerf.IsZero()) return job;
  for (NestPart& part : job.parts) part.may_turn = turning == Turning::kAll;
  return job;
}

}  // namespace tillwright::testing
