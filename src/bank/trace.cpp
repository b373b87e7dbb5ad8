#include "tillwright/trace.h"

#include <utility>

namespace tillwright {

int Trace::Add(TraceNode node) {
  nodes_.push_back(std::move(node));
  return static_cast<int>(nodes_.size()) - 1;
}

int Trace::Name(int node, std::string path) {
  TraceNode& at = nodes_[static_cast<std::size_t>(node)];
  if (at.name.empty()) {
    at.name = path;
  } else if (at.name != path) {
    TraceNode same;
    same.kind = TraceNode::Kind::kSame;
    same.value = at.value;
    same.left = node;
    same.name = path;
    node = Add(std::move(same));
  }
  paths_.emplace(std::move(path), node);
  return node;
}

int Trace::Find(std::string_view path) const {
  const auto found = paths_.find(path);
  return found == paths_.end() ? -1 : found->second;
}

std::vector<std::string> Trace::Paths() const {
  std::vector<std::string> all;
  for (const auto& [path, node] : paths_) all.push_back(path);
  return all;
}

}  // namespace tillwright
