#pragma once

#include <QByteArray>

/// A sentence of NMEA 0183 with its sum.
inline QByteArray sentence(const QByteArray& body)
{
    char sum = 0;
    for (const char c : body)
        sum = static_cast<char>(sum ^ c);
    return '$' + body + '*' + QByteArray::number(static_cast<unsigned char>(sum), 16).rightJustified(2, '0').toUpper() + "\r\n";
}
