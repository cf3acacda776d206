# How this project declares its targets: one library a folder, warnings as one interface target.
set(CMAKE_CXX_EXTENSIONS OFF)
set(CMAKE_EXPORT_COMPILE_COMMANDS ON)
if(MATWRIGHT_APP)
    # The same libraries go into the programs and into the parts that are opened later. What a part
    # shares with the program is the program's, so nothing exists twice (ENABLE_EXPORTS there).
    set(CMAKE_POSITION_INDEPENDENT_CODE ON)
    add_compile_options($<$<CONFIG:Release>:-fno-semantic-interposition>)
endif()

add_library(matwright_flags INTERFACE)
target_compile_features(matwright_flags INTERFACE cxx_std_23)
target_compile_options(matwright_flags INTERFACE -Wall -Wextra -Wpedantic -Wconversion -Wshadow)
if(MATWRIGHT_WARNINGS_AS_ERRORS)
    target_compile_options(matwright_flags INTERFACE -Werror)
endif()
if(CMAKE_UNITY_BUILD)
    # Joined sources look like one header to g++, so it minds their file-local types.
    target_compile_options(matwright_flags INTERFACE -Wno-subobject-linkage)
endif()
target_include_directories(matwright_flags INTERFACE ${PROJECT_SOURCE_DIR})
if(MATWRIGHT_SANITIZE)
    target_compile_options(matwright_flags INTERFACE
        -fsanitize=${MATWRIGHT_SANITIZE} -fno-sanitize-recover=all -fno-omit-frame-pointer)
    target_link_options(matwright_flags INTERFACE -fsanitize=${MATWRIGHT_SANITIZE})
endif()

# matwright_library(name SOURCES ... DEPENDS ... [LINKS ...])
# DEPENDS are public (their headers are part of ours); LINKS are private.
function(matwright_library name)
    cmake_parse_arguments(PARSE_ARGV 1 ARG "" "" "SOURCES;DEPENDS;LINKS")
    add_library(matwright_${name} STATIC ${ARG_SOURCES})
    list(TRANSFORM ARG_DEPENDS REPLACE "^core_" "matwright_core_")
    list(TRANSFORM ARG_DEPENDS REPLACE "^app_" "matwright_app_")
    target_link_libraries(matwright_${name} PUBLIC matwright_flags ${ARG_DEPENDS} PRIVATE ${ARG_LINKS})
endfunction()

# matwright_part(name SOURCES ... LINKS ...): a part of the program in a library of its own that is
# opened on first use (app/parts), as build/lib/matwright/libmatwright-NAME.so; installed alike.
set(MATWRIGHT_PARTS_DIR ${CMAKE_INSTALL_LIBDIR}/matwright)
configure_file(${CMAKE_CURRENT_LIST_DIR}/part.json.in ${PROJECT_BINARY_DIR}/parts/part.json)
function(matwright_part name)
    cmake_parse_arguments(PARSE_ARGV 1 ARG "" "" "SOURCES;LINKS")
    set(target matwright_part_${name})
    add_library(${target} MODULE ${ARG_SOURCES})
    list(TRANSFORM ARG_LINKS REPLACE "^app_" "matwright_app_")
    target_include_directories(${target} PRIVATE ${PROJECT_BINARY_DIR}/parts)
    target_link_libraries(${target} PRIVATE matwright_flags ${ARG_LINKS})
    if(NOT MATWRIGHT_SANITIZE)
        # What is missing shows when it is built, not when a person comes to use it.
        target_link_options(${target} PRIVATE -Wl,--no-undefined)
    endif()
    set_target_properties(${target} PROPERTIES
        PREFIX libmatwright- OUTPUT_NAME ${name} AUTOMOC_MOC_OPTIONS "-I${PROJECT_BINARY_DIR}/parts"
        LIBRARY_OUTPUT_DIRECTORY ${PROJECT_BINARY_DIR}/${MATWRIGHT_PARTS_DIR})
    install(TARGETS ${target} LIBRARY DESTINATION ${MATWRIGHT_PARTS_DIR})
endfunction()

# What a test program is compiled with: what is tested is built as people run it, the tests
# themselves are not worth the time. g++ 12 sees copies beyond the ends of its own std::string
# ("text" + std::string) in optimised code; there are none.
set(MATWRIGHT_TEST_FLAGS -pthread)
foreach(flag -O1 -Wno-array-bounds -Wno-restrict -Wno-stringop-overflow -Wno-stringop-overread)
    list(APPEND MATWRIGHT_TEST_FLAGS $<$<CONFIG:Release>:${flag}>)
endforeach()

# The headers that nearly every test reads are read once, by the target `headers` (tests/support).
function(matwright_test_options name headers)
    target_compile_options(${name} PRIVATE ${MATWRIGHT_TEST_FLAGS})
    if(MATWRIGHT_PRECOMPILED_TESTS)
        target_precompile_headers(${name} REUSE_FROM ${headers})
    endif()
endfunction()

# matwright_test(name SOURCES ... LINKS ...): one GoogleTest program; every test is its own ctest case.
function(matwright_test name)
    cmake_parse_arguments(PARSE_ARGV 1 ARG "" "" "SOURCES;LINKS")
    add_executable(${name} ${ARG_SOURCES})
    matwright_test_options(${name} matwright_test_headers)
    list(TRANSFORM ARG_LINKS REPLACE "^core_" "matwright_core_")
    list(TRANSFORM ARG_LINKS REPLACE "^app_" "matwright_app_")
    target_link_libraries(${name} PRIVATE matwright_flags ${ARG_LINKS} GTest::gtest_main)
    gtest_discover_tests(${name} DISCOVERY_TIMEOUT 60 PROPERTIES TIMEOUT 300)
endfunction()
