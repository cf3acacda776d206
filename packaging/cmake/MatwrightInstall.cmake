# Where Linux desktops expect the parts of a program.
if(MATWRIGHT_APP)
    foreach(program matwright matwright-batch)
        if(TARGET ${program})
            set_target_properties(${program} PROPERTIES
                RUNTIME_OUTPUT_DIRECTORY ${PROJECT_BINARY_DIR}/bin)
            install(TARGETS ${program} RUNTIME DESTINATION ${CMAKE_INSTALL_BINDIR})
        endif()
    endforeach()
    set(linux ${PROJECT_SOURCE_DIR}/packaging/linux)
    install(FILES ${linux}/org.matwright.matwright.desktop
        DESTINATION ${CMAKE_INSTALL_DATADIR}/applications)
    install(FILES ${linux}/org.matwright.matwright.metainfo.xml
        DESTINATION ${CMAKE_INSTALL_DATADIR}/metainfo)
    install(FILES ${linux}/matwright.xml DESTINATION ${CMAKE_INSTALL_DATADIR}/mime/packages)
    install(FILES ${PROJECT_SOURCE_DIR}/resources/icons/matwright.svg
        DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/scalable/apps
        RENAME org.matwright.matwright.svg)
    install(DIRECTORY ${PROJECT_SOURCE_DIR}/examples/
        DESTINATION ${CMAKE_INSTALL_DATADIR}/matwright/examples)
    install(DIRECTORY ${PROJECT_SOURCE_DIR}/resources/starters/
        DESTINATION ${CMAKE_INSTALL_DATADIR}/matwright/starters)
endif()
