# Compiler settings shared by every target of the project.
set(CMAKE_CXX_STANDARD 20)
set(CMAKE_CXX_STANDARD_REQUIRED ON)
set(CMAKE_CXX_EXTENSIONS OFF)
set(CMAKE_POSITION_INDEPENDENT_CODE ON)
set(CMAKE_RUNTIME_OUTPUT_DIRECTORY ${PROJECT_BINARY_DIR})

if(NOT CMAKE_BUILD_TYPE)
  set(CMAKE_BUILD_TYPE Release CACHE STRING "" FORCE)
endif()

# -O2 builds in two thirds of the time of -O3 and runs heats as fast; assertions stay on, since stopping beats a
# silently wrong number.
set(CMAKE_CXX_FLAGS_RELEASE "-O2")

# A precompiled header changes what ccache may assume; these two are what its manual asks for.
find_program(CCACHE ccache)
if(CCACHE AND NOT RAMPWRIGHT_COVERAGE)
  set(CMAKE_CXX_COMPILER_LAUNCHER ${CMAKE_COMMAND} -E env CCACHE_SLOPPINESS=pch_defines,time_macros ${CCACHE})
endif()

add_library(rampwright_settings INTERFACE)
target_compile_options(rampwright_settings INTERFACE -Wall -Wextra -Wpedantic -Wshadow -Wconversion
  -Wno-sign-conversion -Wno-missing-field-initializers -Wnon-virtual-dtor -Woverloaded-virtual -Werror)
# GCC 12 reports false positives from inlined library code (std::string above all) under these at -O2 and above, which
# ones depends on the precompiled header.
target_compile_options(rampwright_settings INTERFACE $<$<CXX_COMPILER_ID:GNU>:-Wno-maybe-uninitialized -Wno-array-bounds
  -Wno-stringop-overflow -Wno-stringop-overread -Wno-restrict>)
if(RAMPWRIGHT_PCH AND CMAKE_CXX_COMPILER_ID STREQUAL "GNU")
  target_compile_options(rampwright_settings INTERFACE -fpch-preprocess)
endif()
if(RAMPWRIGHT_SANITIZE)
  add_compile_options(-fsanitize=address,undefined -fno-sanitize-recover=undefined -fno-omit-frame-pointer -O1)
  add_link_options(-fsanitize=address,undefined)
endif()
if(RAMPWRIGHT_COVERAGE)
  add_compile_options(--coverage -O0)
  add_link_options(--coverage)
endif()
