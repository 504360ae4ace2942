#include "core/book/sample_book.h"

#include "book/audit.h"
#include "book/bundle.h"
#include "book/database.h"
#include "book/stored_text.h"

#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <QtTest>
#include <sstream>

using namespace sample;

namespace {

bool always(std::size_t)
{
    return true;
}

/// A book of two devices with a photo of every byte value.
Store sampleBook(const Bench& bench)
{
    Store store = bench.make("sender", 1);
    std::string photo;
    for (int i = 0; i < 1000; ++i)
        photo += static_cast<char>(i * 7);
    const std::string hash = store.putBlob(photo).value();
    std::ignore = store.sealAll(setup()).value();
    std::ignore = store.seal(entry("photo", 100, {{"blob", hash}, {"media_type", "image/png"}}, 5)).value();
    Store other = bench.make("other", 2);
    std::ignore = other.mergeFrom(store).value();
    std::ignore = other.seal(entry("note", 101, {{"text", "r\u00e9sum\u00e9 \u001e \"quoted\""}}, 6)).value();
    std::ignore = store.mergeFrom(other).value();
    if (!store.saveDraft(id(100), "place", "never in a bundle"))
        qFatal("no draft");
    return store;
}

std::string bundleOf(const Store& store)
{
    std::ostringstream out;
    std::ignore = writeBundle(store, out, always).value();
    return out.str();
}

groundcount::Result<BundleReport> taken(Store& into, const std::string& text)
{
    std::istringstream in(text);
    return takeBundle(into, in, always);
}

bool says(const BundleReport& report, const char* words)
{
    for (const std::string& line : report.refused)
        if (line.find(words) != std::string::npos)
            return true;
    return false;
}

std::vector<std::string> textsOf(const std::string& bundle)
{
    std::vector<std::string> texts;
    for (std::size_t at = 0; at < bundle.size();) {
        const std::size_t next = std::min(bundle.find('\x1e', at + 1), bundle.size());
        texts.push_back(bundle.substr(at, next - at));
        at = next;
    }
    return texts;
}

}  // namespace

class BundleTest : public QObject {
    Q_OBJECT

private slots:
    void textsOutOfTheFileAreThoseOfTheRecords();
    void carriesRecordsAndContentsWhole();
    void isReadByAnyJsonReader();
    void takingTwiceChangesNothing();
    void damagedTextsAreListedAndTheRestIsTaken();
    void aBundleCutAnywhereIsTakenAsFarAsItGoes();
    void otherFilesAreRefused();
    void stopsWhenAskedAndGoesOnLater();
    void theFileAppearsWhenItIsWhole();
    void contentOfAnotherHashIsRefused();
};

void BundleTest::carriesRecordsAndContentsWhole()
{
    Bench bench;
    const Store from = sampleBook(bench);
    Store into = bench.make("into", 3);
    const auto report = taken(into, bundleOf(from)).value();
    QVERIFY2(report.refused.empty(), report.refused.empty() ? "" : report.refused[0].c_str());
    QVERIFY(report.whole && !report.stopped);
    QCOMPARE(report.taken, setup().size() + 2);
    QCOMPARE(report.blobs, std::size_t(1));
    QCOMPARE(into.derivedText().value(), from.derivedText().value());
    QCOMPARE(into.blobHashes().value(), from.blobHashes().value());
    QCOMPARE(into.blob(into.blobHashes()->front()).value(), from.blob(from.blobHashes()->front()).value());
    QCOMPARE(into.draft(id(100), "place").value(), std::string());
    QVERIFY(check(into)->isClean());
}

void BundleTest::isReadByAnyJsonReader()
{
    // against Qt's JSON reader and base64, not the ones that wrote it [RFC 7464, RFC 4648]
    Bench bench;
    const Store from = sampleBook(bench);
    int records = 0, blobs = 0, lines = 0;
    QJsonObject last;
    for (const std::string& text : textsOf(bundleOf(from))) {
        QCOMPARE(text.front(), '\x1e');
        QCOMPARE(text.back(), '\n');
        QJsonParseError error;
        last = QJsonDocument::fromJson(QByteArray::fromStdString(text.substr(1)), &error).object();
        QCOMPARE(error.error, QJsonParseError::NoError);
        records += last.contains("record");
        if (last.contains("record"))
            QCOMPARE(last["record"].toObject().size(), 14);
        if (last.contains("blob")) {
            ++blobs;
            const auto content = QByteArray::fromBase64Encoding(last["content"].toString().toLatin1(), QByteArray::AbortOnBase64DecodingErrors);
            QCOMPARE(content.decodingStatus, QByteArray::Base64DecodingStatus::Ok);
            QCOMPARE(content.decoded.toStdString(), from.blob(last["blob"].toString().toStdString()).value());
        }
        ++lines;
    }
    QCOMPARE(last["end"].toObject()["records"].toInt(), records);
    QCOMPARE(last["end"].toObject()["blobs"].toInt(), blobs);
    QCOMPARE(lines, records + blobs + 2);
    QCOMPARE(blobs, 1);
}

void BundleTest::takingTwiceChangesNothing()
{
    Bench bench;
    const std::string bundle = bundleOf(sampleBook(bench));
    Store into = bench.make("into", 3);
    QVERIFY(taken(into, bundle));
    const std::string before = into.derivedText().value();
    const auto again = taken(into, bundle).value();
    QCOMPARE(again.taken, std::size_t(0));
    QCOMPARE(again.known, setup().size() + 2);
    QCOMPARE(into.derivedText().value(), before);
}

void BundleTest::damagedTextsAreListedAndTheRestIsTaken()
{
    Bench bench;
    const Store from = sampleBook(bench);
    auto texts = textsOf(bundleOf(from));
    texts[3].replace(texts[3].find("technician"), 10, "engineerrr");         // content no longer gives its hash
    texts[4].resize(texts[4].size() / 2);                                    // torn
    texts.insert(texts.begin() + 6, std::string("\x1e{\"weather\":\"fair\"}\n"));  // unknown
    texts.push_back(texts[2]);                                               // behind the end
    std::string bundle;
    for (const std::string& text : texts)
        bundle += text;
    Store into = bench.make("into", 3);
    const auto report = taken(into, bundle).value();
    QCOMPARE(report.taken, setup().size());
    QCOMPARE(report.blobs, std::size_t(1));
    QCOMPARE(report.refused.size(), std::size_t(5));
    QVERIFY2(says(report, "The content no longer gives its hash: person of 00000004"), report.refused[0].c_str());
    QVERIFY(says(report, "Text 5 of the bundle was not taken"));
    QVERIFY(says(report, "Text 7 of the bundle was not taken: it is neither"));
    QVERIFY(says(report, "behind the closing line"));
    QVERIFY(says(report, "does not hold the numbers"));
    QVERIFY(!report.whole);
}

void BundleTest::aBundleCutAnywhereIsTakenAsFarAsItGoes()
{
    Bench bench;
    const Store from = sampleBook(bench);
    const std::string bundle = bundleOf(from);
    for (std::size_t cut = 120; cut < bundle.size() - 2; cut += 397) {
        Store into = bench.make(("cut" + std::to_string(cut)).c_str(), 3);
        const auto report = taken(into, bundle.substr(0, cut)).value();
        QVERIFY2(says(report, "ends before its closing line"), std::to_string(cut).c_str());
        QVERIFY(report.taken <= setup().size() + 2);
        const auto rest = taken(into, bundle).value();
        QVERIFY(rest.whole && rest.refused.empty());
        QCOMPARE(into.derivedText().value(), from.derivedText().value());
    }
}

void BundleTest::otherFilesAreRefused()
{
    Bench bench;
    Store into = bench.make("into", 3);
    for (const std::string text : {"", "\x1e", "{}", "\x1e{}\n", "SQLite format 3", "\x1e{\"bundle\":\"field book\",\"format\":3}\n", "\x1e{\"bundle\":\"field book\",\"format\":2}\n", "\x1e{\"book\":\"x\",\"bundle\":\"field book\",\"format\":2}\n"}) {
        const auto report = taken(into, text);
        QVERIFY2(!report, text.c_str());
        QCOMPARE(report.error().fault, groundcount::Fault::Refused);
        QVERIFY(report.error().what.find("does not begin as a bundle of format 1") != std::string::npos);
    }
    QVERIFY(!takeBundleFile(into, bench.at("nowhere"), always));
    QCOMPARE(into.lastRow().value(), std::int64_t(0));
}

void BundleTest::stopsWhenAskedAndGoesOnLater()
{
    Bench bench;
    Store from = bench.make("many", 1);
    std::vector<Entry> notes;
    for (int i = 0; i < 1700; ++i)
        notes.push_back(entry("note", 1000 + i, {{"text", std::to_string(i)}}, i));
    QVERIFY(from.sealAll(notes));
    std::ostringstream out;
    QVERIFY(!writeBundle(from, out, [](std::size_t done) { return done < 1000; }));
    const std::string bundle = bundleOf(from);
    Store into = bench.make("into", 3);
    std::size_t asked = 0;
    std::istringstream in(bundle);
    const auto part = takeBundle(into, in, [&](std::size_t done) { ++asked; return done < 1000; }).value();
    QVERIFY(part.stopped && !part.whole);
    QCOMPARE(asked, std::size_t(2));
    QCOMPARE(part.taken, std::size_t(1000));
    QVERIFY(part.refused.empty());
    QVERIFY(check(into)->isClean());
    const auto rest = taken(into, bundle).value();
    QCOMPARE(rest.known, std::size_t(1000));
    QCOMPARE(rest.taken, std::size_t(700));
}

void BundleTest::theFileAppearsWhenItIsWhole()
{
    Bench bench;
    const Store from = sampleBook(bench);
    const std::string path = bench.at("out.fieldbundle");
    QVERIFY(!writeBundleFile(from, path, [](std::size_t) { return false; }));
    QVERIFY(!QFile::exists(QString::fromStdString(path)));
    QVERIFY(!QFile::exists(QString::fromStdString(path + ".part")));
    QCOMPARE(writeBundleFile(from, path, always)->records, setup().size() + 2);
    QVERIFY(!QFile::exists(QString::fromStdString(path + ".part")));
    QVERIFY(!writeBundleFile(from, path, always));  // the name is taken
    Store into = bench.make("into", 3);
    QVERIFY(takeBundleFile(into, path, always)->whole);
    QVERIFY(!writeBundleFile(from, bench.at("no/such/folder"), always));
}

void BundleTest::contentOfAnotherHashIsRefused()
{
    Bench bench;
    Store into = bench.make("into", 3);
    const std::string head = "\x1e{\"bundle\":\"field book\",\"format\":1}\n";
    const std::string hash(64, 'a');
    for (const std::string content : {"\"AAAA\"", "\"AAA\"", "\"A A=\"", "7", "null"}) {
        const auto report = taken(into, head + "\x1e{\"blob\":\"" + hash + "\",\"content\":" + content + "}\n\x1e{\"end\":{\"records\":0,\"blobs\":1}}\n").value();
        QCOMPARE(report.refused.size(), std::size_t(1));
        QVERIFY(report.whole);
    }
    QVERIFY(into.blobHashes()->empty());
}

void BundleTest::textsOutOfTheFileAreThoseOfTheRecords()
{
    const Bench bench;
    Store store = sampleBook(bench);
    Entry hard = amend(store.records({}).value()[2], store.records({}).value()[2].body, 9, "\",\"kind\":\",\"subject\":, \\ and so on");
    hard.body["kind"] = ",\"kind\":\",\"subject\":";
    QVERIFY(store.seal(hard));
    const auto compare = [&] {
        const auto texts = storedTexts(store, 0, 1000).value();
        const auto records = store.storedRecords({}).value();
        QCOMPARE(texts.size(), records.size());
        for (std::size_t i = 0; i < texts.size(); ++i) {
            QCOMPARE(texts[i].row, records[i].row);
            QCOMPARE(texts[i].text, textOfRecord(records[i].record).value());
        }
    };
    compare();
    const auto two = storedTexts(store, 3, 2).value();
    QCOMPARE(two.size(), std::size_t(2));
    QCOMPARE(two[0].row, std::int64_t(4));
    // what was written past the program is read and written again: no second text of the same record, and never something that is no JSON
    QVERIFY(store.database().exec("UPDATE record SET body = replace(body, ':', ' : ') WHERE row = 2"));
    compare();
    QVERIFY(store.database().exec("UPDATE record SET signature = signature || '\"' WHERE row = 3"));
    compare();
    QVERIFY(store.database().exec("UPDATE record SET body = '{' WHERE row = 4"));
    QVERIFY(!storedTexts(store, 0, 1000));
}

QTEST_GUILESS_MAIN(BundleTest)
#include "bundle_test.moc"
