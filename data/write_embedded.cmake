# Writes OUT: the texts of FILES (relative to ROOT) behind drawwell::embedded_data(name).
set(text "#include \"cli/read/embedded_data.h\"\n\nnamespace drawwell {\n\nstd::string_view embedded_data(std::string_view name) {\n")
foreach(file IN LISTS FILES)
    file(READ ${ROOT}/${file} content)
    string(APPEND text "    if (name == \"${file}\")\n        return R\"data(${content})data\";\n")
endforeach()
string(APPEND text "    return {};\n}\n\n}  // namespace drawwell\n")
file(WRITE ${OUT} "${text}")
