#include "book/seal.h"

#include "book/canonical.h"
#include "book/hash.h"

#include <QFile>
#include <QTemporaryDir>
#include <QtTest>
#include <set>
#include <thread>

using namespace groundcount::book;

namespace {

const char* const kSubject = "11111111-2222-4333-8444-555555555555";
const char* const kPerson = "99999999-2222-4333-8444-555555555555";

DeviceKey testKey(unsigned char fill = 7)
{
    std::array<unsigned char, 32> seed{};
    seed.fill(fill);
    return DeviceKey::fromSeed(seed);
}

Entry note()
{
    Entry entry;
    entry.kind = "note";
    entry.subject = kSubject;
    entry.by = kPerson;
    entry.at = "2026-06-09T15:41:07.250Z";
    entry.offsetMinutes = -300;
    entry.body = {{"text", "Rained at noon."}};
    return entry;
}

}  // namespace

class SealTest : public QObject {
    Q_OBJECT

private slots:
    void hashIsBlake2bOfPublishedExample();
    void signsAsRfc8032Test1Key();
    void sealedRecordHolds();
    void anyChangedPartIsSeen_data();
    void anyChangedPartIsSeen();
    void anyFlippedBitOfTheJsonIsSeen();
    void anotherDevicesSignatureIsRefused();
    void refusesWrongEnvelopes_data();
    void refusesWrongEnvelopes();
    void keyIsMadeOnceAndKept();
    void damagedOrOpenKeyFileIsRefused();
    void twoStartsEndWithOneKey();
    void subjectsAreDistinctAndWellFormed();
    void jsonComesBackEqual();
};

void SealTest::hashIsBlake2bOfPublishedExample()
{
    // BLAKE2b-256 of the empty message and of "abc": computed by Python's hashlib.blake2b(digest_size=32), RFC 7693's function.
    QCOMPARE(blake2b256Hex(""), std::string("0e5751c026e543b2e8ab2eb06099daa1d1e5df47778f7787faab45cdf12fe3a8"));
    QCOMPARE(blake2b256Hex("abc"), std::string("bddd813c634239723171ef3fee98579b94964e3bb1cb3e427262c8c068d52319"));
}

void SealTest::signsAsRfc8032Test1Key()
{
    // RFC 8032, section 7.1, TEST 1: secret key and public key (from memory of the RFC).
    const QByteArray seed = QByteArray::fromHex("9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60");
    std::array<unsigned char, 32> bytes{};
    std::copy(seed.begin(), seed.end(), bytes.begin());
    QCOMPARE(DeviceKey::fromSeed(bytes).device(), std::string("d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a"));
}

void SealTest::sealedRecordHolds()
{
    const auto record = sealEntry(note(), testKey(), 1, "");
    QVERIFY(record);
    QVERIFY(verifyRecord(*record));
    QCOMPARE(blake2b256Hex(canonicalRecord(*record).value()), record->hash);
    const auto next = sealEntry(note(), testKey(), 2, record->hash);
    QVERIFY(next && verifyRecord(*next));
    QVERIFY(!sealEntry(note(), testKey(), 2, ""));
    QVERIFY(!sealEntry(note(), testKey(), 1, record->hash));
    QVERIFY(!sealEntry(note(), testKey(), 0, ""));
}

void SealTest::anyChangedPartIsSeen_data()
{
    QTest::addColumn<QByteArray>("member");
    QTest::addColumn<QByteArray>("value");
    const auto row = [](const char* member, const char* value) { QTest::newRow(member) << QByteArray(member) << QByteArray(value); };
    row("amends", "\"aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa\"");
    row("at", "\"2026-06-09T15:41:07.251Z\"");
    row("body", "{\"text\":\"Rained at noon\"}");
    row("book", "\"99999999-2222-4333-8444-555555555557\"");
    row("by", "\"99999999-2222-4333-8444-555555555556\"");
    row("device", "\"d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a\"");
    row("hash", "\"aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa\"");
    row("kind", "\"notes\"");
    row("offset_minutes", "-299");
    row("prev", "\"aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa\"");
    row("reason", "\"why\"");
    row("seq", "3");
    row("signature", "\"00\"");
    row("subject", "\"11111111-2222-4333-8444-555555555556\"");
}

void SealTest::anyChangedPartIsSeen()
{
    QFETCH(QByteArray, member);
    QFETCH(QByteArray, value);
    const auto record = sealEntry(note(), testKey(), 2, std::string(64, 'b'), kPerson);
    auto json = recordJson(*record);
    json[member.toStdString()] = readJson(value.toStdString()).value();
    const auto changed = recordFromJson(json);
    QVERIFY(changed);
    QVERIFY(!verifyRecord(*changed));
}

void SealTest::anyFlippedBitOfTheJsonIsSeen()
{
    const auto record = sealEntry(note(), testKey(), 2, std::string(64, 'b'), kPerson);
    const std::string text = canonicalText(recordJson(*record)).value();
    int refused = 0;
    for (std::size_t i = 0; i < text.size() * 8; ++i) {
        std::string flipped = text;
        flipped[i / 8] = static_cast<char>(static_cast<unsigned char>(flipped[i / 8]) ^ (1U << (i % 8)));
        const auto json = readJson(flipped);
        const auto changed = json ? recordFromJson(*json) : groundcount::Result<Record>(groundcount::refused("not JSON"));
        QVERIFY2(!changed || !verifyRecord(*changed), flipped.c_str());
        ++refused;
    }
    QCOMPARE(refused, static_cast<int>(text.size() * 8));
}

void SealTest::anotherDevicesSignatureIsRefused()
{
    auto record = sealEntry(note(), testKey(), 1, "").value();
    record.signature = testKey(8).sign(record.hash).value();
    const auto verdict = verifyRecord(record);
    QVERIFY(!verdict);
    QVERIFY(verdict.error().what.find("signature is not that device's") != std::string::npos);
    QVERIFY(verdict.error().what.find("number 1") != std::string::npos);
}

void SealTest::refusesWrongEnvelopes_data()
{
    QTest::addColumn<QByteArray>("part");
    QTest::addColumn<QByteArray>("value");
    QTest::addColumn<QByteArray>("says");
    const auto row = [](const char* part, const char* value, const char* says) {
        QTest::addRow("%s %s", part, value) << QByteArray(part) << QByteArray(value) << QByteArray(says);
    };
    row("kind", "", "kind");
    row("kind", "Test", "kind");
    row("subject", "11111111-2222-4333-8444-55555555555", "UUID");
    row("subject", "11111111-2222-4333-8444-55555555555A", "UUID");
    row("amends", "abc", "hash of 64");
    row("by", "", "person");
    row("reason", "because", "empty unless");
    row("at", "2026-06-09T15:41:07Z", "YYYY-MM-DDTHH:MM:SS.mmmZ");
    row("at", "2026-02-29T15:41:07.000Z", "YYYY");
    row("at", "2026-06-09T24:00:00.000Z", "YYYY");
    row("at", "2026-06-09 15:41:07.000Z", "YYYY");
    row("offset", "841", "-840 to 840");
    row("void", "", "reason of this void is empty");
    row("void", "   ", "reason of this void is empty");
}

void SealTest::refusesWrongEnvelopes()
{
    QFETCH(QByteArray, part);
    QFETCH(QByteArray, value);
    QFETCH(QByteArray, says);
    Entry entry = note();
    const std::string text = value.toStdString();
    if (part == "kind") entry.kind = text;
    if (part == "subject") entry.subject = text;
    if (part == "amends") { entry.amends = text; entry.reason = "typo"; }
    if (part == "by") entry.by = text;
    if (part == "reason") entry.reason = text;
    if (part == "at") entry.at = text;
    if (part == "offset") entry.offsetMinutes = value.toInt();
    if (part == "void") { entry.kind = "void"; entry.body = Body::object(); entry.reason = text; }
    const auto sealed = sealEntry(entry, testKey(), 1, "");
    QVERIFY(!sealed);
    QVERIFY2(QByteArray::fromStdString(sealed.error().what).contains(says), sealed.error().what.c_str());
    entry = note();
    entry.at = "2028-02-29T23:59:59.999Z";  // a leap day that exists
    QVERIFY(sealEntry(entry, testKey(), 1, ""));
}

void SealTest::keyIsMadeOnceAndKept()
{
    QTemporaryDir folder;
    const std::string path = folder.filePath("device.key").toStdString();
    const auto made = DeviceKey::loadOrMake(path);
    QVERIFY(made);
    QCOMPARE(QFile(QString::fromStdString(path)).permissions() & (QFile::ReadGroup | QFile::ReadOther | QFile::WriteGroup), QFile::Permissions());
    const auto again = DeviceKey::loadOrMake(path);
    QVERIFY(again);
    QCOMPARE(again->device(), made->device());
    QCOMPARE(QDir(folder.path()).entryList(QDir::Files).size(), 1);
    QVERIFY(DeviceKey::loadOrMake(folder.filePath("other.key").toStdString())->device() != made->device());
}

void SealTest::damagedOrOpenKeyFileIsRefused()
{
    QTemporaryDir folder;
    const QString path = folder.filePath("device.key");
    QVERIFY(DeviceKey::loadOrMake(path.toStdString()));
    QFile::setPermissions(path, QFile::ReadOwner | QFile::WriteOwner | QFile::ReadOther);
    const auto open = DeviceKey::loadOrMake(path.toStdString());
    QVERIFY(!open);
    QVERIFY(open.error().what.find("0600") != std::string::npos);
    QFile::setPermissions(path, QFile::ReadOwner | QFile::WriteOwner);
    QVERIFY(QFile::resize(path, 30));
    QVERIFY(!DeviceKey::loadOrMake(path.toStdString()));
    const auto nowhere = DeviceKey::loadOrMake(folder.filePath("no/folder/device.key").toStdString());
    QVERIFY(!nowhere);
    QVERIFY(nowhere.error().fault == groundcount::Fault::Unavailable);
}

void SealTest::twoStartsEndWithOneKey()
{
    QTemporaryDir folder;
    const std::string path = folder.filePath("device.key").toStdString();
    std::array<std::string, 8> devices;
    {
        std::vector<std::jthread> starts;
        for (auto& device : devices)
            starts.emplace_back([&path, &device] { device = DeviceKey::loadOrMake(path).value().device(); });
    }
    for (const auto& device : devices)
        QCOMPARE(device, devices[0]);
}

void SealTest::subjectsAreDistinctAndWellFormed()
{
    std::set<std::string> seen;
    for (int i = 0; i < 1000; ++i) {
        const std::string subject = newSubject();
        QVERIFY2(isSubject(subject) && subject[14] == '4', subject.c_str());
        QVERIFY(seen.insert(subject).second);
    }
}

void SealTest::jsonComesBackEqual()
{
    const auto record = sealEntry(note(), testKey(), 1, "").value();
    const auto back = recordFromJson(readJson(canonicalText(recordJson(record)).value()).value());
    QVERIFY(back && verifyRecord(*back));
    QCOMPARE(recordJson(*back), recordJson(record));
    auto more = recordJson(record);
    more["extra"] = 1;
    QVERIFY(!recordFromJson(more));
    more = recordJson(record);
    more["seq"] = 1.5;
    QVERIFY(!recordFromJson(more));
}

QTEST_GUILESS_MAIN(SealTest)
#include "seal_test.moc"
