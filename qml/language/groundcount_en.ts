<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en">
<context>
    <name>groundcount::view::DrawSheet</name>
    <message numerus="yes">
        <source>%n site(s) of this lift are drawn already.</source>
        <translation>
            <numerusform>%n site of this lift is drawn already.</numerusform>
            <numerusform>%n sites of this lift are drawn already.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Seal %n site(s)</source>
        <translation>
            <numerusform>Seal %n site</numerusform>
            <numerusform>Seal %n sites</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>groundcount::view::FiguresView</name>
    <message numerus="yes">
        <source>%1: %n result(s) in order</source>
        <translation>
            <numerusform>%1: %n result in order</numerusform>
            <numerusform>%1: %n results in order</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n outside the control limits</source>
        <translation>
            <numerusform>%n outside the control limits</numerusform>
            <numerusform>%n outside the control limits</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n result(s) enter</source>
        <translation>
            <numerusform>%n result enters</numerusform>
            <numerusform>%n results enter</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n left out</source>
        <translation>
            <numerusform>%n left out</numerusform>
            <numerusform>%n left out</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pair(s) differ</source>
        <translation>
            <numerusform>%n pair differs</numerusform>
            <numerusform>%n pairs differ</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pair(s) show no difference</source>
        <translation>
            <numerusform>%n pair shows no difference</numerusform>
            <numerusform>%n pairs show no difference</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>groundcount::view::LotsView</name>
    <message numerus="yes">
        <source>%n failure(s) open</source>
        <translation>
            <numerusform>%n failure open</numerusform>
            <numerusform>%n failures open</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>groundcount::view::MapView</name>
    <message numerus="yes">
        <source>%n failure(s) open</source>
        <translation>
            <numerusform>%n failure open</numerusform>
            <numerusform>%n failures open</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>groundcount::view::ProfileView</name>
    <message numerus="yes">
        <source>%n failure(s) open</source>
        <translation>
            <numerusform>%n failure open</numerusform>
            <numerusform>%n failures open</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>groundcount::view::ReviewView</name>
    <message numerus="yes">
        <source>%n test(s) without a drawn site</source>
        <translation>
            <numerusform>%n test without a drawn site</numerusform>
            <numerusform>%n tests without a drawn site</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>groundcount::view::StandingWords</name>
    <message numerus="yes">
        <source>%n record(s) since</source>
        <translation>
            <numerusform>%n record since</numerusform>
            <numerusform>%n records since</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n failure(s) open</source>
        <translation>
            <numerusform>%n failure open</numerusform>
            <numerusform>%n failures open</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n test(s) owed</source>
        <translation>
            <numerusform>%n test owed</numerusform>
            <numerusform>%n tests owed</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n test(s) not finished</source>
        <translation>
            <numerusform>%n test not finished</numerusform>
            <numerusform>%n tests not finished</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n test(s) amended twice apart</source>
        <translation>
            <numerusform>%n test amended twice apart</numerusform>
            <numerusform>%n tests amended twice apart</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>all %n test(s) made, no failure open</source>
        <translation>
            <numerusform>the one test made, no failure open</numerusform>
            <numerusform>all %n tests made, no failure open</numerusform>
        </translation>
    </message>
</context>
</TS>
