# tillwright_cairo: sheets to SVG, PDF and PNG. The only part that sees Cairo, FreeType and libpng.
include(${CMAKE_CURRENT_LIST_DIR}/../cmake/embed.cmake)

add_library(tillwright_cairo STATIC
  ${CMAKE_CURRENT_LIST_DIR}/cairo_painter.cpp
  ${CMAKE_CURRENT_LIST_DIR}/drawing_font.cpp
  ${CMAKE_CURRENT_LIST_DIR}/pdf.cpp
  ${CMAKE_CURRENT_LIST_DIR}/pdf_catalog.cpp
  ${CMAKE_CURRENT_LIST_DIR}/png.cpp
  ${CMAKE_CURRENT_LIST_DIR}/sheet_check.cpp
  ${CMAKE_CURRENT_LIST_DIR}/svg.cpp
  ${CMAKE_CURRENT_LIST_DIR}/svg_text.cpp)
add_library(tillwright::cairo ALIAS tillwright_cairo)
target_include_directories(tillwright_cairo PRIVATE ${CMAKE_CURRENT_LIST_DIR}/..)
target_link_libraries(tillwright_cairo
  PUBLIC tillwright_core
  PRIVATE PkgConfig::Cairo PkgConfig::Freetype PNG::PNG $<BUILD_INTERFACE:tillwright_flags>)

# The drawing font, from Debian's fonts-dejavu-core.
set(tillwright_font_places
  /usr/share/fonts/truetype/dejavu /usr/share/fonts/dejavu /usr/share/fonts/TTF)
find_file(TILLWRIGHT_FONT_REGULAR DejaVuSans.ttf PATHS ${tillwright_font_places} REQUIRED
  DOC "DejaVu Sans, embedded into the program")
find_file(TILLWRIGHT_FONT_BOLD DejaVuSans-Bold.ttf PATHS ${tillwright_font_places} REQUIRED
  DOC "DejaVu Sans Bold, embedded into the program")
mark_as_advanced(TILLWRIGHT_FONT_REGULAR TILLWRIGHT_FONT_BOLD)
tillwright_embed_file(tillwright_cairo tillwright_font_regular ${TILLWRIGHT_FONT_REGULAR})
tillwright_embed_file(tillwright_cairo tillwright_font_bold ${TILLWRIGHT_FONT_BOLD})
