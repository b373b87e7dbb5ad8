#include "write/packet.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "bank/headings.h"
#include "bank/id_list.h"
#include "tillwright/length_text.h"
#include "write/cautions.h"
#include "write/finding_groups.h"
#include "write/html.h"
#include "write/work_steps.h"

namespace tillwright {
namespace {

// Plain enough for an old phone; on paper black on white, a section not torn where that can be
// helped, boxes to tick drawn as boxes.
constexpr std::string_view kStyle =
    ":root{color-scheme:light dark}\n"
    "body{font:1rem/1.45 sans-serif;max-width:64rem;margin:0 auto;padding:0 1rem 3rem;"
    "color:#1a1a1a;background:#fff}\n"
    "h1{font-size:1.6rem;margin:1.2rem 0 .2rem}h2{font-size:1.2rem;margin:2rem 0 .5rem;"
    "border-bottom:2px solid}h3{font-size:1rem;margin:1.2rem 0 .3rem}\n"
    "nav ul,ol.steps,ul.checks,ul.plain{list-style:none;padding:0}nav li{display:inline-block;"
    "margin:.2rem 1rem .2rem 0}\n"
    "a{color:#0b4f8a}nav a,ul.plain a{display:inline-block;padding:.35rem 0}\n"
    ".wide{overflow-x:auto}table{border-collapse:collapse;margin:.3rem 0 1rem}"
    "th,td{border:1px solid #999;padding:.25rem .55rem;text-align:left;vertical-align:top}"
    ".n{text-align:right;font-variant-numeric:tabular-nums;white-space:nowrap}"
    "thead th{background:#eee}\n"
    ".pictures{display:flex;flex-wrap:wrap;gap:1rem 2rem;align-items:flex-end}"
    "figure{margin:.5rem 0;flex:1 1 min(26rem,100%)}figure "
    "svg{display:block;width:100%;height:auto}"
    "figcaption{font-size:.9rem}\n"
    ".level{font-weight:bold;text-transform:uppercase}.caution{border-left:.4rem solid;"
    "padding:.2rem .7rem;margin:.4rem 0}\n"
    "ol.steps>li{margin:1rem 0}ol.steps label{font-weight:bold}ol.steps input{width:1.2rem;"
    "height:1.2rem;vertical-align:text-bottom}\n"
    "@media screen and (prefers-color-scheme:dark){body{color:#e8e8e8;background:#15181c}"
    "a{color:#8ec5ff}thead th{background:#2a3038}}\n"
    "@media screen and (max-width:40rem){.stack,.stack tbody,.stack tr,.stack th,.stack td{"
    "display:block}.stack thead{display:none}.stack tr{border:1px solid #999;margin:.5rem 0}"
    ".stack tr>*{border:0;padding:.15rem .55rem}.stack tr>th{background:#eee;text-align:left;"
    "white-space:normal}"
    ".stack td:empty{display:none}.stack td.n{text-align:left;white-space:normal}.stack "
    "td[data-head]::before{content:attr(data-head) \": \";opacity:.75}}\n"
    "@media screen and (max-width:40rem) and (prefers-color-scheme:dark){.stack tr>th{"
    "background:#2a3038}}\n"
    "@media "
    "print{.pictures{display:block}.wide{overflow:visible}body{max-width:none;padding:0;font-size:"
    "10pt;color:#000;background:#fff}nav{"
    "display:none}a{color:inherit}figure,tr,ol.steps>li{break-inside:avoid}"
    "h2,h3{break-after:avoid}thead th{background:none}}\n";

// A screen is read from further away than paper in the hand: pictures may grow to this.
constexpr double kOnScreen = 1.5;

class Page {
 public:
  Page(const Bank& bank, const std::vector<Finding>& findings,
       const std::vector<PacketSection>& sections, std::string_view picture_style)
      : bank_(bank), findings_(findings), sections_(sections), picture_style_(picture_style) {}

  std::string Run() {
    Head();
    Checks();
    Cautions();
    for (const PacketSection& section : sections_) Section(section);
    WorkOrder();
    out_ += "</main>\n</body>\n</html>\n";
    return std::move(out_);
  }

 private:
  std::string In(Length length) const { return FormatLength(length, bank_.units); }

  void Element(std::string_view tag, std::string_view text, std::string_view attributes = {}) {
    out_ += '<';
    out_ += tag;
    out_ += attributes;
    out_ += '>' + HtmlText(text) + "</";
    out_ += tag;
    out_ += ">\n";
  }

  void Open(std::string_view id, std::string_view heading) {
    out_ += "<section id=\"";
    out_ += id;
    out_ += "\">\n";
    Element("h2", heading);
  }

  void Head() {
    const std::string title = TitleOr(bank_.title);
    out_ +=
        "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
        "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n";
    Element("title", title + ": shop packet");
    out_ += "<style>\n";
    out_ += kStyle;
    out_ += picture_style_;
    out_ += "</style>\n</head>\n<body>\n<header>\n";
    Element("h1", title);
    Element("p", Summary());
    out_ += "<nav aria-label=\"On this page\"><ul>\n";
    Link("checks", "Checks");
    Link("cautions", "Cautions");
    for (const PacketSection& section : sections_) Link(section.id, section.heading);
    Link("steps", "Steps");
    out_ += "</ul></nav>\n</header>\n<main>\n";
  }

  void Link(std::string_view id, std::string_view text) {
    out_ += "<li><a href=\"#";
    out_ += id;
    out_ += "\">" + HtmlText(text) + "</a></li>\n";
  }

  std::string Summary() const {
    const auto drawers = std::ranges::count_if(bank_.spaces, &Space::HasBox);
    std::string text = std::to_string(drawers) + (drawers == 1 ? " drawer" : " drawers") +
                       " in an opening " + In(bank_.opening_width) + " wide, " +
                       In(bank_.opening_height) + " high and " + In(bank_.opening_depth) + " deep";
    if (bank_.casework) {
      const CaseBuild& c = *bank_.casework;
      text += "; case " + In(c.width) + " × " + In(c.height) + " × " + In(c.depth);
    }
    return text + ". All sizes in " + std::string(UnitsWord(bank_.units)) + ".";
  }

  void Checks() {
    Open("checks", "Checks");
    const auto passed = std::ranges::count(findings_, Level::kPass, &Finding::level);
    const bool failed = HasFailure(findings_);
    Element("p", failed ? "Do not cut yet: a check fails."
                        : "No check fails. " + std::to_string(passed) + " passed.");
    out_ += "<ul class=\"checks\">\n";
    for (const Level level : {Level::kFail, Level::kWarn, Level::kNote}) {
      for (const FindingGroup& group : FindingGroups(findings_, level)) Check(group);
    }
    out_ += "</ul>\n</section>\n";
  }

  void Check(const FindingGroup& group) {
    out_ += "<li><span class=\"level\">" + HtmlText(ToText(group.finding->level)) + "</span> " +
            HtmlText(group.subjects.ToText() + ": " + group.finding->message) + "</li>\n";
  }

  void Cautions() {
    Open("cautions", "Before you cut");
    for (const std::string_view caution : kCautions) Element("p", caution, " class=\"caution\"");
    out_ += "</section>\n";
  }

  void Section(const PacketSection& section) {
    Open(section.id, section.heading);
    for (const std::string& line : section.lines) Element("p", line);
    if (!section.pictures.empty()) {
      out_ += "<div class=\"pictures\">\n";
      for (const PacketPicture& picture : section.pictures) Picture(picture);
      out_ += "</div>\n";
    }
    for (const BankTable& table : section.tables) {
      std::string heading = table.heading;
      if (!table.remark.empty()) heading += " (" + std::string(table.remark) + ")";
      if (!heading.empty()) Element("h3", heading);
      out_ += HtmlTable(table.table);
    }
    for (const std::string& note : section.notes) Element("p", note);
    if (!section.files.empty()) Files(section.files);
    out_ += "</section>\n";
  }

  void Picture(const PacketPicture& picture) {
    out_ +=
        "<figure style=\"max-width:" + std::to_string(std::lround(picture.width_mm * kOnScreen)) +
        "mm\">\n" + picture.svg;
    if (!picture.caption.empty() || !picture.file.empty()) {
      out_ += "<figcaption>" + HtmlText(picture.caption);
      if (!picture.file.empty()) {
        out_ += " <a href=\"" + HtmlLink(picture.file) + "\">" + HtmlText(picture.file) + "</a>";
      }
      out_ += "</figcaption>";
    }
    out_ += "</figure>\n";
  }

  void Files(const std::vector<PacketFile>& files) {
    out_ += "<ul class=\"plain\">\n";
    for (const PacketFile& file : files) {
      out_ += "<li><a href=\"" + HtmlLink(file.path) + "\">" + HtmlText(file.path) + "</a>";
      if (!file.about.empty()) out_ += ": " + HtmlText(file.about);
      out_ += "</li>\n";
    }
    out_ += "</ul>\n";
  }

  void WorkOrder() {
    Open("steps", "Steps in working order");
    out_ += "<ol class=\"steps\">\n";
    int number = 0;
    for (const WorkStep& step : WorkSteps(bank_)) {
      out_ += "<li><label><input type=\"checkbox\"> " + std::to_string(++number) + ". " +
              HtmlText(step.title) + "</label>\n";
      for (const std::string& line : step.lines) Element("p", line);
      for (const std::string& caution : step.cautions) {
        Element("p", caution, " class=\"caution\"");
      }
      out_ += "</li>\n";
    }
    out_ += "</ol>\n</section>\n";
  }

  const Bank& bank_;
  const std::vector<Finding>& findings_;
  const std::vector<PacketSection>& sections_;
  std::string_view picture_style_;
  std::string out_;
};

}  // namespace

std::string PacketPage(const Bank& bank, const std::vector<Finding>& findings,
                       const std::vector<PacketSection>& sections, std::string_view picture_style) {
  return Page(bank, findings, sections, picture_style).Run();
}

}  // namespace tillwright
