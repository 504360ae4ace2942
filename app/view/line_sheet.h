#pragma once

#include "view/kit_form.h"

namespace groundcount::view {

/// A straight line that stations count along, typed off the plans: its name, the station of its begin, the grid coordinates of
/// both ends. Curves and station equations come in a site file.
class LineSheet : public groundcount::view::KitForm {  // written out: the type registrar finds a base by its full name
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString name READ name NOTIFY changed)
    Q_PROPERTY(QString unit READ unit NOTIFY changed)
    Q_PROPERTY(QString beginStation MEMBER m_begin NOTIFY changed)
    Q_PROPERTY(QString fromText MEMBER m_from NOTIFY changed)
    Q_PROPERTY(QString toText MEMBER m_to NOTIFY changed)
    /// "600.0 ft, azimuth 14.00°, to station 56+00"
    Q_PROPERTY(QString lineText MEMBER m_lineText NOTIFY changed)

public:
    explicit LineSheet(QObject* parent = nullptr) : KitForm(parent) {}

    QString name() const { return typed("name"); }
    QString unit() const;
    Q_INVOKABLE void setName(const QString& text) { type(QStringLiteral("name"), text); }
    Q_INVOKABLE void typeBegin();
    Q_INVOKABLE void typeFrom() { typePoint(tr("Begin of the line"), QStringLiteral("1")); }
    Q_INVOKABLE void typeTo() { typePoint(tr("End of the line"), QStringLiteral("2")); }

protected:
    const char* draftName() const override { return "line"; }
    void refresh() override;
    Result<std::vector<book::Entry>> entries() const override;

private:
    /// The record's body. @error Refused with what is missing or cannot be
    Result<book::Body> body() const;
    void typePoint(const QString& title, const QString& end);
    QString pointText(const char* north, const char* east) const;

    QString m_begin, m_from, m_to, m_lineText;
};

}  // namespace groundcount::view
