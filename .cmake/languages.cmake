# Reads every sentence out of the sources into the files of the languages: SOURCE, LIST (the program that writes the
# core's catalogues as C++), LUPDATE, WORK (a folder), FILES (the .ts files to bring up to date).
file(MAKE_DIRECTORY ${WORK})
execute_process(COMMAND ${LIST} OUTPUT_FILE ${WORK}/texts.cpp COMMAND_ERROR_IS_FATAL ANY)
execute_process(COMMAND ${LUPDATE} -silent -locations none -no-obsolete -no-ui-lines
                        ${SOURCE}/src ${SOURCE}/ui ${WORK}/texts.cpp -ts ${FILES}
                ERROR_VARIABLE said RESULT_VARIABLE failed)
# The tool knows classes of the toolkit only and remarks on each other one. Without the core's headers it takes the
# context of `Core::tr` as it is written: "Core".
string(REGEX REPLACE "[^\n]*(lacks Q_OBJECT macro|unknown namespace/class ::[a-zA-Z]+)\n?" "" said "${said}")
if(failed OR said)
  message(FATAL_ERROR "lupdate: ${said}")
endif()
