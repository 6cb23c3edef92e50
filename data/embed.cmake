# embed(OUT SOURCE HEADER header FUNCTION name ROOT folder FILES file...): each file becomes a string
# literal of one generated source, so that the program needs no files beside it.
function(embed out)
    cmake_parse_arguments(arg "" "HEADER;FUNCTION;ROOT" "FILES" ${ARGN})
    set(paths)
    foreach(file IN LISTS arg_FILES)
        if(NOT IS_ABSOLUTE "${file}")
            set(file "${arg_ROOT}/${file}")
        endif()
        list(APPEND paths "${file}")
    endforeach()
    add_custom_command(OUTPUT ${out}
        COMMAND ${CMAKE_COMMAND} "-DFILES=${arg_FILES}" -DROOT=${arg_ROOT} -DHEADER=${arg_HEADER}
            -DFUNCTION=${arg_FUNCTION} -DOUT=${out} -P ${PROJECT_SOURCE_DIR}/data/write_embedded.cmake
        DEPENDS ${paths} ${PROJECT_SOURCE_DIR}/data/write_embedded.cmake VERBATIM)
endfunction()

# Every .toml below data/.
file(GLOB_RECURSE data_files CONFIGURE_DEPENDS RELATIVE ${PROJECT_SOURCE_DIR}/data
    ${PROJECT_SOURCE_DIR}/data/*.toml)
set(DRAWWELL_EMBEDDED_DATA ${PROJECT_BINARY_DIR}/generated/embedded_data.cpp)
embed(${DRAWWELL_EMBEDDED_DATA} HEADER cli/read/embedded_data.h FUNCTION embedded_data
    ROOT ${PROJECT_SOURCE_DIR}/data FILES ${data_files})

# What the report page is made of, and the charting library of Debian's libjs-dygraphs.
find_file(DYGRAPHS_JS dygraph.min.js PATHS /usr/share/javascript/dygraphs NO_DEFAULT_PATH REQUIRED)
find_file(DYGRAPHS_CSS dygraph.min.css PATHS /usr/share/javascript/dygraphs NO_DEFAULT_PATH REQUIRED)
set(DRAWWELL_WEB_TEMPLATES ${PROJECT_BINARY_DIR}/generated/web_templates.cpp)
embed(${DRAWWELL_WEB_TEMPLATES} HEADER cli/report/web/templates.h FUNCTION web_template
    ROOT ${PROJECT_SOURCE_DIR}/cli/report/web FILES page.html page.css page.js
    ${DYGRAPHS_JS} ${DYGRAPHS_CSS})
