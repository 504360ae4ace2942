import QtQuick
import QtQuick.Controls.Basic as C
import Groundcount

// A sheet of Kit: head, what is shown and typed, one act under the thumb. Numbers are typed on a pane of their own over it.
FocusScope {
    id: root

    required property KitForm form
    property bool hasAct: true
    property bool ofLot: false
    property string secondText: ""
    signal second
    readonly property bool compact: height < 700
    readonly property real columnWidth: width > 680 ? 640 : width - 2 * Theme.margin
    default property alias content: column.data

    Rectangle {
        anchors.fill: parent
        color: Theme.paper
    }
    Item {
        anchors.fill: parent
        visible: root.form.entry === null

        Item {
            id: head
            objectName: "kitHead"
            x: Theme.margin
            width: root.columnWidth
            height: title.implicitHeight + Theme.gap2 > 56 ? title.implicitHeight + Theme.gap2 : 56

            Pressable {
                objectName: "back"
                x: -Theme.margin
                width: 52
                height: 56
                text: qsTr("Back")
                onClicked: {
                    if (root.ofLot)
                        Desk.lotSheet = "";
                    else
                        Desk.kit = "";
                }
                contentItem: Item {
                    Icon {
                        glyph: Glyph.Back
                        x: 12
                        anchors.verticalCenter: parent.verticalCenter
                    }
                }
            }
            Text {
                id: title
                objectName: "title"
                anchors.left: parent.left
                anchors.leftMargin: 32
                anchors.right: parent.right
                anchors.verticalCenter: parent.verticalCenter
                text: root.form.title
                color: Theme.ink
                font.pixelSize: Theme.sizeTitle
                font.weight: Theme.strong
                textFormat: Text.PlainText
                wrapMode: Text.WordWrap
                Accessible.role: Accessible.Heading
                Accessible.name: text
            }
        }
        Flickable {
            id: scroll
            objectName: "stepScroll"
            anchors.top: head.bottom
            anchors.bottom: foot.top
            width: parent.width
            contentWidth: width
            contentHeight: column.implicitHeight + Theme.gap5
            clip: true
            boundsBehavior: Flickable.StopAtBounds
            C.ScrollBar.vertical: C.ScrollBar {
                policy: C.ScrollBar.AsNeeded
            }

            Column {
                id: column
                x: Theme.margin
                width: root.columnWidth
                spacing: Theme.gap2

                Body {
                    objectName: "kitContext"
                    width: parent.width
                    visible: text !== ""
                    color: Theme.ink2
                    text: root.form.contextLine
                }
            }
        }
        ActFoot {
            id: foot
            anchors.bottom: parent.bottom
            width: parent.width
            height: root.hasAct || root.secondText !== "" || troubleText.text !== "" ? implicitHeight : 0
            visible: height > 0

            Row {
                width: parent.width
                visible: troubleText.text !== ""
                spacing: Theme.gap2
                Icon {
                    glyph: Glyph.Warning
                    width: 24
                    height: 24
                }
                Body {
                    id: troubleText
                    objectName: "kitTrouble"
                    width: parent.width - 24 - Theme.gap2
                    text: root.form.trouble
                }
            }
            PrimaryButton {
                objectName: "kitSeal"
                width: root.columnWidth
                visible: root.hasAct && root.form.sealNotYet === "" && root.form.sealText !== ""
                compact: root.compact
                text: root.form.sealText
                onClicked: root.form.seal()
            }
            NotYetButton {
                objectName: "kitSealNotYet"
                width: root.columnWidth
                compact: root.compact
                visible: root.hasAct && root.form.sealNotYet !== ""
                text: root.form.sealNotYet
            }
            SecondaryButton {
                objectName: "kitSecond"
                width: root.columnWidth
                visible: root.secondText !== ""
                tall: !root.compact
                text: root.secondText
                onClicked: root.second()
            }
        }
    }
    Loader {
        anchors.fill: parent
        active: root.form.entry !== null
        visible: active
        focus: active
        sourceComponent: EntryPane {
            // qmllint disable unqualified
            entry: root.form.entry
            compact: root.compact
            onBack: root.form.closeEntry()
            // qmllint enable unqualified
        }
    }
}
