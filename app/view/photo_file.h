#pragma once

#include "method/error.h"

#include <QByteArray>
#include <QString>

#include <string>

namespace groundcount::view {

/// A picture file taken in whole, byte by byte.
struct PhotoFile {
    QByteArray content;
    std::string mediaType;  ///< "image/jpeg" or "image/png", by the content
    QString name;
};

/// Reads a JPEG or PNG of at most 30 MB.
/// @error Refused with the file's name and what is wrong; Unavailable when it cannot be read
Result<PhotoFile> readPhoto(const QString& path);

/// A small picture of the content as a data: URL for a page; empty when it is no picture.
QString thumbnail(const QByteArray& content);

}  // namespace groundcount::view
