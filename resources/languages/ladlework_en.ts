<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>Handout</name>
    <message numerus="yes">
        <source>%n hour(s)</source>
        <translation>
            <numerusform>%n hour</numerusform>
            <numerusform>%n hours</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 to %n day(s)</source>
        <translation>
            <numerusform>%1 to %n day</numerusform>
            <numerusform>%1 to %n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 to %n month(s)</source>
        <translation>
            <numerusform>%1 to %n month</numerusform>
            <numerusform>%1 to %n months</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n day</numerusform>
            <numerusform>%n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Charts differ. One gives soup %1 in the fridge. An older one gives meat broth %2. Your practice uses %n day(s).</source>
        <translation>
            <numerusform>Charts differ. One gives soup %1 in the fridge. An older one gives meat broth %2. Your practice uses %n day.</numerusform>
            <numerusform>Charts differ. One gives soup %1 in the fridge. An older one gives meat broth %2. Your practice uses %n days.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Move it to the fridge the day before you need it. Never thaw it on the counter. Drink it within %n day(s).</source>
        <translation>
            <numerusform>Move it to the fridge the day before you need it. Never thaw it on the counter. Drink it within %n day.</numerusform>
            <numerusform>Move it to the fridge the day before you need it. Never thaw it on the counter. Drink it within %n days.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n step(s)</source>
        <translation>
            <numerusform>%n step</numerusform>
            <numerusform>%n steps</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Go up 1 step after %n good day(s).</source>
        <translation>
            <numerusform>Go up 1 step after %n good day.</numerusform>
            <numerusform>Go up 1 step after %n good days.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <translation>
            <numerusform>%1 and %n more</numerusform>
            <numerusform>%1 and %n more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Then watch for %n day(s) without it.</source>
        <translation>
            <numerusform>Then watch for %n day without it.</numerusform>
            <numerusform>Then watch for %n days without it.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>About %1, and %n thing(s) without a price.</source>
        <translation>
            <numerusform>About %1, and %n thing without a price.</numerusform>
            <numerusform>About %1, and %n things without a price.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Measure</name>
    <message numerus="yes">
        <source>drops</source>
        <translation>
            <numerusform>drop</numerusform>
            <numerusform>drops</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>tsp</source>
        <translation>
            <numerusform>tsp</numerusform>
            <numerusform>tsp</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>tbsp</source>
        <translation>
            <numerusform>tbsp</numerusform>
            <numerusform>tbsp</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>cups</source>
        <translation>
            <numerusform>cup</numerusform>
            <numerusform>cups</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>pints</source>
        <translation>
            <numerusform>pint</numerusform>
            <numerusform>pints</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>quarts</source>
        <translation>
            <numerusform>quart</numerusform>
            <numerusform>quarts</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>gallons</source>
        <translation>
            <numerusform>gallon</numerusform>
            <numerusform>gallons</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>days</source>
        <translation>
            <numerusform>day</numerusform>
            <numerusform>days</numerusform>
        </translation>
    </message>
</context>
</TS>
