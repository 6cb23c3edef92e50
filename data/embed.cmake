# Every .toml below data/ becomes a string literal of one generated source, so that the program
# needs no files beside it.
file(GLOB_RECURSE DRAWWELL_DATA_FILES CONFIGURE_DEPENDS RELATIVE ${PROJECT_SOURCE_DIR}/data
    ${PROJECT_SOURCE_DIR}/data/*.toml)
set(DRAWWELL_EMBEDDED_DATA ${PROJECT_BINARY_DIR}/generated/embedded_data.cpp)
list(TRANSFORM DRAWWELL_DATA_FILES PREPEND ${PROJECT_SOURCE_DIR}/data/ OUTPUT_VARIABLE data_paths)
add_custom_command(OUTPUT ${DRAWWELL_EMBEDDED_DATA}
    COMMAND ${CMAKE_COMMAND} "-DFILES=${DRAWWELL_DATA_FILES}" -DROOT=${PROJECT_SOURCE_DIR}/data
        -DOUT=${DRAWWELL_EMBEDDED_DATA} -P ${PROJECT_SOURCE_DIR}/data/write_embedded.cmake
    DEPENDS ${data_paths} ${PROJECT_SOURCE_DIR}/data/write_embedded.cmake VERBATIM)
