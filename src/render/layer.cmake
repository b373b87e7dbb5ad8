# Sheets to SVG, PDF and PNG. The only layer that sees Cairo, FreeType and libpng.
include(src/cmake/embed.cmake)
tillwright_layer(render
  USES sheet
  HEADERS render
  SOURCES
    cairo_painter.cpp
    drawing_font.cpp
    pdf.cpp
    pdf_catalog.cpp
    png.cpp
    sheet_check.cpp
    svg.cpp
    svg_text.cpp)
target_link_libraries(tillwright_render PRIVATE PkgConfig::Cairo PkgConfig::Freetype PNG::PNG)

# The drawing font, from Debian's fonts-dejavu-core.
set(tillwright_font_places
  /usr/share/fonts/truetype/dejavu /usr/share/fonts/dejavu /usr/share/fonts/TTF)
find_file(TILLWRIGHT_FONT_REGULAR DejaVuSans.ttf PATHS ${tillwright_font_places} REQUIRED
  DOC "DejaVu Sans, embedded into the program")
find_file(TILLWRIGHT_FONT_BOLD DejaVuSans-Bold.ttf PATHS ${tillwright_font_places} REQUIRED
  DOC "DejaVu Sans Bold, embedded into the program")
mark_as_advanced(TILLWRIGHT_FONT_REGULAR TILLWRIGHT_FONT_BOLD)
tillwright_embed_file(tillwright_render tillwright_font_regular ${TILLWRIGHT_FONT_REGULAR})
tillwright_embed_file(tillwright_render tillwright_font_bold ${TILLWRIGHT_FONT_BOLD})
