import QtQuick
import QtQuick.Controls.Basic as C
import Groundcount

// A test: six steps on one sheet, one act under the thumb. Numbers are typed on a pane of their own over the sheet.
FocusScope {
    id: root

    required property TestSheet sheet
    readonly property bool compact: height < 700
    readonly property bool counting: sheet.step === TestSheet.Count && sheet.count.stage === CountStep.Running
    readonly property list<url> pages: ["PlaceStepPage.qml", "ClearStepPage.qml", "SeatStepPage.qml", "CountStepPage.qml", "DigStepPage.qml", "VerdictStepPage.qml"]
    signal back

    objectName: "testPage"


    Rectangle {
        anchors.fill: parent
        color: Theme.paper
    }
    Item {
        anchors.fill: parent
        visible: root.sheet.entry === null && !root.sheet.struckShown && !root.sheet.recordShown && !root.sheet.ask.isOpen

        PageHead {
            id: head
            objectName: "testHead"
            x: Theme.margin
            width: parent.width - 2 * Theme.margin
            title: root.counting ? qsTr("Count") : root.sheet.title
            context: root.counting ? "" : root.sheet.context
            context2: root.counting ? "" : root.sheet.context2
            link: root.counting ? root.sheet.count.struckTitle : ""
            hasBack: true
            onBack: root.back()
            onLinkActivated: root.sheet.struckShown = true
        }
        StepHead {
            id: stepHead
            anchors.top: head.bottom
            x: Theme.margin
            width: parent.width - 2 * Theme.margin
            height: visible ? 58 : 0
            visible: !root.counting
            steps: root.sheet.steps
            now: root.sheet.step
            onPicked: index => root.sheet.pickStep(index)
        }
        Flickable {
            id: scroll
            objectName: "stepScroll"
            anchors.top: stepHead.bottom
            anchors.topMargin: Theme.gap2
            anchors.bottom: foot.top
            width: parent.width
            contentWidth: width
            contentHeight: stepLoader.height + below.height + Theme.gap4
            clip: true
            boundsBehavior: Flickable.StopAtBounds
            C.ScrollBar.vertical: C.ScrollBar {
                policy: C.ScrollBar.AsNeeded
            }

            Loader {
                id: stepLoader
                objectName: "stepLoader"
                x: Theme.margin
                width: scroll.width - 2 * Theme.margin
                source: root.pages[root.sheet.step]
                onSourceChanged: scroll.contentY = 0

                Binding {
                    target: stepLoader.item
                    property: "sheet"
                    value: root.sheet
                    when: stepLoader.status === Loader.Ready
                }
            }
            Column {
                id: below
                x: Theme.margin
                y: stepLoader.height + Theme.gap2
                width: stepLoader.width

                Hair {
                    width: parent.width
                    visible: amendLink.visible || recordLink.visible
                }
                LinkRow {
                    id: amendLink
                    objectName: "amendLink"
                    width: parent.width
                    visible: root.sheet.canAmend
                    text: qsTr("Amend this step")
                    onClicked: root.sheet.askAmend()
                }
                Hair {
                    width: parent.width
                    visible: amendLink.visible
                }
                LinkRow {
                    id: recordLink
                    objectName: "recordLink"
                    width: parent.width
                    visible: root.sheet.hasRecord && !root.counting
                    text: qsTr("Record, notes, photos")
                    onClicked: root.sheet.recordShown = true
                }
            }
        }
        ActFoot {
            id: foot
            anchors.bottom: parent.bottom
            width: parent.width

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
                    objectName: "sheetTrouble"
                    width: parent.width - 24 - Theme.gap2
                    text: root.sheet.trouble
                }
            }
            Row {
                width: parent.width
                visible: root.sheet.amending !== ""
                spacing: Theme.gap2
                Body {
                    objectName: "amending"
                    anchors.verticalCenter: parent.verticalCenter
                    width: parent.width - keepAsSealed.width - Theme.gap2
                    font.weight: Theme.strong
                    text: root.sheet.amending
                }
                SecondaryButton {
                    id: keepAsSealed
                    objectName: "dropAmendment"
                    width: 152 * Theme.textScale
                    text: qsTr("Leave it")
                    onClicked: root.sheet.dropAmendment()
                }
            }
            CountActs {
                width: parent.width
                visible: root.sheet.step === TestSheet.Count && root.sheet.count.stage !== CountStep.Typed
                compact: root.compact
                sheet: root.sheet
            }
            PrimaryButton {
                objectName: "seal"
                width: parent.width
                visible: root.sheet.sealText !== "" && root.sheet.sealNotYet === ""
                compact: root.compact
                text: root.sheet.sealText
                onClicked: root.sheet.seal()
            }
            NotYetButton {
                objectName: "sealNotYet"
                width: parent.width
                compact: root.compact
                visible: root.sheet.sealNotYet !== "" && !(root.sheet.step === TestSheet.Count && root.sheet.count.stage !== CountStep.Typed)
                text: root.sheet.sealNotYet
            }
            SecondaryButton {
                objectName: "sealedNext"
                width: parent.width
                tall: !root.compact
                visible: root.sheet.sealText === ""
                text: root.sheet.step === TestSheet.Verdict ? qsTr("Done") : root.sheet.sealedText
                onClicked: root.sheet.step === TestSheet.Verdict ? root.back() : root.sheet.pickStep(root.sheet.step + 1)
            }
        }
    }
    Loader {
        anchors.fill: parent
        active: root.sheet.entry !== null
        visible: active
        focus: active
        sourceComponent: EntryPane {
            // qmllint disable unqualified
            entry: root.sheet.entry
            compact: root.compact
            onBack: root.sheet.closeEntry()
            // qmllint enable unqualified
        }
    }
    RecordPage {
        anchors.fill: parent
        visible: root.sheet.recordShown
        sheet: root.sheet
        onBack: root.sheet.recordShown = false
    }
    Loader {
        anchors.fill: parent
        active: root.sheet.ask.isOpen
        visible: active
        focus: active
        sourceComponent: AskPane {
            // qmllint disable unqualified
            ask: root.sheet.ask
            onAnswered: reason => root.sheet.answer(reason)
            // qmllint enable unqualified
        }
    }
    StruckCard {
        anchors.fill: parent
        visible: root.sheet.struckShown
        count: root.sheet.count
        onBack: root.sheet.struckShown = false
    }
}
