# tillwright_embed_file(<target> <symbol> <file>)
#
# Links the bytes of <file> into <target> as `extern "C" const unsigned char <symbol>[]`, with
# `<symbol>_end` just past the last byte. The assembler reads the file itself (.incbin), which takes
# no time and no generated array. The object is built anew when the file changes.
function(tillwright_embed_file target symbol file)
  set(source "${CMAKE_CURRENT_BINARY_DIR}/${symbol}.embedded.cpp")
  file(CONFIGURE OUTPUT "${source}" @ONLY CONTENT [[
// Written by embed.cmake: the bytes of a file, between two symbols.
asm(".pushsection .rodata\n"
    ".balign 16\n"
    ".globl @symbol@\n"
    "@symbol@:\n"
    ".incbin \"@file@\"\n"
    ".globl @symbol@_end\n"
    "@symbol@_end:\n"
    ".byte 0\n"
    ".popsection\n");
]])
  set_source_files_properties("${source}" PROPERTIES OBJECT_DEPENDS "${file}")
  target_sources(${target} PRIVATE "${source}")
endfunction()
