# What a Qt 6 kit for Android, iOS, macOS or Windows needs to know of the app. docs/build-*.md say what was built and run, and what was not.
set(GROUNDCOUNT_IDENTIFIER "org.groundcount.app")

if(ANDROID)
  set_target_properties(groundcount PROPERTIES
    QT_ANDROID_PACKAGE_SOURCE_DIR "${CMAKE_CURRENT_LIST_DIR}/android"
    QT_ANDROID_MIN_SDK_VERSION 26
    QT_ANDROID_TARGET_SDK_VERSION 33)
elseif(APPLE)
  set_target_properties(groundcount PROPERTIES
    MACOSX_BUNDLE TRUE
    MACOSX_BUNDLE_GUI_IDENTIFIER "${GROUNDCOUNT_IDENTIFIER}"
    MACOSX_BUNDLE_BUNDLE_VERSION "${PROJECT_VERSION}"
    MACOSX_BUNDLE_SHORT_VERSION_STRING "${PROJECT_VERSION}"
    MACOSX_BUNDLE_INFO_PLIST "${CMAKE_CURRENT_LIST_DIR}/apple/Info.plist.in"
    XCODE_ATTRIBUTE_CODE_SIGN_ENTITLEMENTS "${CMAKE_CURRENT_LIST_DIR}/apple/groundcount.entitlements")
elseif(WIN32)
  set_target_properties(groundcount PROPERTIES WIN32_EXECUTABLE TRUE)
  target_sources(groundcount PRIVATE "${CMAKE_CURRENT_LIST_DIR}/windows/groundcount.manifest")
endif()
