<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>CapturesMenu</name>
    <message>
        <source>Last captures</source>
        <extracomment>app/captures_menu.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Samples</source>
        <extracomment>app/captures_menu.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None yet: open a capture</source>
        <extracomment>app/captures_menu.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CautionStrip</name>
    <message>
        <source>Cautions</source>
        <extracomment>app/views/caution_strip.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before you connect or sweep</source>
        <extracomment>app/views/caution_strip.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All</source>
        <extracomment>app/views/caution_strip.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show all cautions</source>
        <extracomment>app/views/caution_strip.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show all cautions, or the first alone</source>
        <extracomment>app/views/caution_strip.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>EventsView</name>
    <message>
        <source>Crossings and events</source>
        <extracomment>app/views/events.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Crossings</source>
        <extracomment>app/views/events.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Events</source>
        <extracomment>app/views/events.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No break-up and no event to step to.</source>
        <extracomment>app/views/events.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Crossings of a worn band, or events, are listed here to step through.</source>
        <extracomment>app/views/events.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>quiet</source>
        <extracomment>app/views/events.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>EvidenceView</name>
    <message>
        <source>Evidence</source>
        <extracomment>app/views/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Evidence: verdict and what it stands on</source>
        <extracomment>app/views/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The capture was not examined to the end. Press F5 to examine it again.</source>
        <extracomment>app/views/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The capture is being examined.</source>
        <extracomment>app/views/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a capture to learn which band of travel is worn, how sure that is, and why.</source>
        <extracomment>app/views/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verdict</source>
        <extracomment>app/views/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Possible: {causes}.</source>
        <extracomment>app/views/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Band {span}</source>
        <extracomment>app/views/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click: light up every crossing. Double-click or Enter: zoom to the clearest one.</source>
        <extracomment>app/views/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Watch: {band}</source>
        <extracomment>app/views/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{noisy} of {passes} crossings break up, up to {worst} %</source>
        <extracomment>app/views/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it stands on</source>
        <extracomment>app/views/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings</source>
        <extracomment>app/views/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to capture next</source>
        <extracomment>app/views/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HintBar</name>
    <message>
        <source>First steps</source>
        <extracomment>app/views/hint_bar.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is a sample. The verdict stands at the right, and what it stands on below it.</source>
        <extracomment>app/views/hint_bar.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Double-click the hatched band on the sensor track to see its clearest crossing; N steps on.</source>
        <extracomment>app/views/hint_bar.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag the dot along the track, or press Space to let the arm run. Drop your own capture here.</source>
        <extracomment>app/views/hint_bar.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close the first steps</source>
        <extracomment>app/views/hint_bar.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>KeysPage</name>
    <message>
        <source>Keys</source>
        <extracomment>app/views/keys_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LanguageMenu</name>
    <message>
        <source>Language</source>
        <extracomment>app/language_menu.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As the desktop</source>
        <extracomment>app/language_menu.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>OverviewView</name>
    <message>
        <source>Overview of the whole record</source>
        <extracomment>app/views/overview.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The whole record. Drag the clear window, or its edges; drag elsewhere for a new one.</source>
        <extracomment>app/views/overview.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whole record</source>
        <extracomment>app/views/overview.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ProblemBar</name>
    <message>
        <source>Problem</source>
        <extracomment>app/views/problem_bar.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close this message</source>
        <extracomment>app/views/problem_bar.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Readout</name>
    <message>
        <source>Reading at the pointer</source>
        <extracomment>app/views/readout.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{travel} of travel</source>
        <extracomment>app/views/readout.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not visited</source>
        <extracomment>app/views/readout.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>worst break-up {worst}</source>
        <extracomment>app/views/readout.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>crossed {count} times</source>
        <extracomment>app/views/readout.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RecordsView</name>
    <message>
        <source>Records</source>
        <extracomment>app/views/records.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Records by step, with their outcome</source>
        <extracomment>app/views/records.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The steps of a capture are ticked off here.</source>
        <extracomment>app/views/records.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not captured</source>
        <extracomment>app/views/records.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ReviewCircle</name>
    <message>
        <source>Reading at the pointer</source>
        <extracomment>app/review_circle.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ReviewKeeper</name>
    <message>
        <source>Saving the review</source>
        <extracomment>app/review_keeper.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ReviewPage</name>
    <message>
        <source>Last captures</source>
        <extracomment>app/review_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open one of the last captures, or a sample</source>
        <extracomment>app/review_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last captures and samples</source>
        <extracomment>app/review_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How fast the arm runs (, and .)</source>
        <extracomment>app/review_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Speed of the arm</source>
        <extracomment>app/review_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Session</name>
    <message>
        <source>Opening {name}</source>
        <extracomment>app/session.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Examining the capture</source>
        <extracomment>app/session.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TraceView</name>
    <message>
        <source>Trace</source>
        <extracomment>app/views/trace.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trace: voltage over time</source>
        <extracomment>app/views/trace.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Voltages over time</source>
        <extracomment>app/views/trace.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a capture, or drop one here, to see its voltages.</source>
        <extracomment>app/views/trace.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This record holds no samples. Choose another record on the left.</source>
        <extracomment>app/views/trace.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawing the record</source>
        <extracomment>app/views/trace.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TrackView</name>
    <message>
        <source>Sensor track</source>
        <extracomment>app/views/track.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sensor track: break-up over travel</source>
        <extracomment>app/views/track.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Track of the sensor</source>
        <extracomment>app/views/track.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which track of the sensor is shown</source>
        <extracomment>app/views/track.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the sensor breaks up along its travel is drawn here.</source>
        <extracomment>app/views/track.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No sweep to show. Capture a slow sweep over the whole travel, a few times up and down.</source>
        <extracomment>app/views/track.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{track} · break-up in % of the applied voltage · {count} crossings</source>
        <extracomment>app/views/track.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>crossed
{count}×</source>
        <extracomment>app/views/track.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Break-up over travel</source>
        <extracomment>app/views/track.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Window</name>
    <message>
        <source>Captures ({patterns});;All files (*)</source>
        <extracomment>app/main_window.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a capture</source>
        <extracomment>app/main_window.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Colours</source>
        <extracomment>app/main_window.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As the desktop</source>
        <extracomment>app/main_window.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light</source>
        <extracomment>app/main_window.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dark</source>
        <extracomment>app/main_window.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Progress</source>
        <extracomment>app/main_window.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>finds the worn band on a position sensor's track, and proves it</source>
        <extracomment>app/main_window.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Capture</source>
        <extracomment>app/main_window.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>actions</name>
    <message>
        <source>Capture</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open…</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a capture</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Examine again</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Examine the open capture again</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop the work</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop opening or examining</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy the reading</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy the reading at the pointer as text</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Quit</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close the window</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>View</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whole record</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the whole record and the whole track</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zoom in</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show less time, in more detail</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zoom out</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show more time</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move to earlier</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the view to earlier time</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move to later</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the view to later time</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>View before</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go back to the view before this one</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>View after</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go forward again</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A lane for each channel</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A lane for each channel, or all on one axis</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Full screen</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use the whole screen</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Previous crossing</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to the previous crossing or event</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next crossing</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to the next crossing or event</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clearest crossing</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zoom to the crossing with the most break-up</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next band</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light up the next band</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose nothing</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let go of the chosen band and crossing</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Previous record</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the previous record</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next record</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the next record</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arm</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let the arm run</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let the arm run along the track, or rest</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arm a little back</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the arm a little back in time</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arm a little on</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the arm a little on in time</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slower</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let the arm run slower</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Faster</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let the arm run faster</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Help</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keys</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show every key</source>
        <extracomment>app/actions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>analysis</name>
    <message>
        <source>a text</source>
        <extracomment>analysis/captures/described.py, analysis/review/stored.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a number</source>
        <extracomment>analysis/captures/described.py, analysis/diagnosis/profile_schema.py, analysis/review/stored.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{key} of {where} is the text {value!r}</source>
        <extracomment>analysis/captures/described.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>store it as a number</source>
        <extracomment>analysis/captures/described.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{key} of {where} is {value:g}</source>
        <extracomment>analysis/captures/described.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>store a finite number</source>
        <extracomment>analysis/captures/described.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{key} of {where} is {value}, not {wanted}</source>
        <extracomment>analysis/captures/described.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>store {wanted} there</source>
        <extracomment>analysis/captures/described.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{where} does not state its {interval_key}</source>
        <extracomment>analysis/captures/described.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>store the seconds between samples in that attribute of {where}</source>
        <extracomment>analysis/captures/described.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the {interval_key} of {where} is {value:g} s</source>
        <extracomment>analysis/captures/described.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>store a positive number of seconds there</source>
        <extracomment>analysis/captures/described.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{where} states no {units_key}</source>
        <extracomment>analysis/captures/described.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>store "V" in that attribute</source>
        <extracomment>analysis/captures/described.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{where} is in {unit!r}, which is no voltage</source>
        <extracomment>analysis/captures/described.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>store it in V, mV or kV</source>
        <extracomment>analysis/captures/described.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file can no longer be read</source>
        <extracomment>analysis/captures/fingerprint.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>check that it is still there</source>
        <extracomment>analysis/captures/fingerprint.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no record has a channel whose role is signal</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>record the signal wire, or set the role</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the capture holds no records</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>record the sensor again, or choose another file</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the capture has no id; one is derived from its content</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no samples</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one sample a channel</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the capture holds {held}</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>record the sensor again</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no channel of the capture has a known role</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set the attribute {role_key} of each channel to signal, reference, ground or supply</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{where} holds no channel and is set aside</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{where} holds {held} and is set aside</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>store plain one-dimensional numbers</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the channels of {where} differ in length ({listed})</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>export that record again</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the step {text!r}, which is unknown</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no step</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{where} states {said}; the step is taken from what the samples show</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the role {text!r}, which is unknown</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no role</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{where} states {said}; it is shown and not judged</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{where} states no full accuracy; it is unknown, not zero</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the {scale_key} of {where} is {value}</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>store the volts a count there</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{where} states no {scale_key}; a count is taken as {count} {unit}</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no such folder to write to</source>
        <extracomment>analysis/captures/replacing.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>create it, or choose another</source>
        <extracomment>analysis/captures/replacing.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>you have no right to write there</source>
        <extracomment>analysis/captures/replacing.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose another folder</source>
        <extracomment>analysis/captures/replacing.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a folder of that name exists already</source>
        <extracomment>analysis/captures/replacing.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose another name</source>
        <extracomment>analysis/captures/replacing.py, analysis/captures/writing.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file could not be written</source>
        <extracomment>analysis/captures/replacing.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>check the free space and the drive</source>
        <extracomment>analysis/captures/replacing.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file</source>
        <extracomment>analysis/captures/stored.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file is HDF5 but no capture</source>
        <extracomment>analysis/captures/stored.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>import it, or set its {format_key} to {format}</source>
        <extracomment>analysis/captures/stored.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file does not state its {version_key}</source>
        <extracomment>analysis/captures/stored.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>store {format_version} there</source>
        <extracomment>analysis/captures/stored.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file has format version {version:g} and this program knows {format_version}</source>
        <extracomment>analysis/captures/stored.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>update the program</source>
        <extracomment>analysis/captures/stored.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file has format version {version:g}, which never was</source>
        <extracomment>analysis/captures/stored.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>record {name}</source>
        <extracomment>analysis/captures/stored.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>channel {name} of {record}</source>
        <extracomment>analysis/captures/stored.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{where} cannot be read, the file is damaged there</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>copy it from the recorder again</source>
        <extracomment>analysis/captures/strict.py, analysis/captures/variable_text.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>you have no right to read the file</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change its permissions or copy it first</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no such file</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>check the name and the folder</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is a folder, not a capture</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose a file inside it</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is a device or a pipe, not a capture</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose a capture file</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file is empty</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file is cut short at {size:,} bytes</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another program is still writing the file</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>close it there and try again</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file is not HDF5, so it is no capture</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>import it, or choose another file</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file is damaged and cannot be opened</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a group</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a group holds more than {most:,} objects</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose another file</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>group {name}</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dataset {name}</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the attributes of {where}</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{where} has more than {most:,} attributes</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>empty</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an array</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a text of absurd length</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a number of unknown size</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an enumeration</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>neither a number nor a text</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>holds something other than plain numbers</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>has {count} dimensions instead of one</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>keeps its samples in another file</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>number {code}</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>is compressed by a filter that is not at hand ({known})</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>claims {count:,} samples but does not hold them</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>is stored in chunks of {count:,} samples, more than can be held</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{where} was read after the capture was closed</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open it again</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the root group</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its texts have variable length and no process can be started to read them safely</source>
        <extracomment>analysis/captures/variable_text.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>store them with fixed length</source>
        <extracomment>analysis/captures/variable_text.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the text attributes of the file are damaged</source>
        <extracomment>analysis/captures/variable_text.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>store plain numbers</source>
        <extracomment>analysis/captures/verification.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a file of that name exists already</source>
        <extracomment>analysis/captures/writing.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>records of the capture</source>
        <extracomment>analysis/captures/writing.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>channels of record {name}</source>
        <extracomment>analysis/captures/writing.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a channel may not be named {name!r}</source>
        <extracomment>analysis/captures/writing.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rename the channel</source>
        <extracomment>analysis/captures/writing.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the channels of record {name} differ in length</source>
        <extracomment>analysis/captures/writing.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cut them to one</source>
        <extracomment>analysis/captures/writing.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the {what} need names of their own, got {names}</source>
        <extracomment>analysis/captures/writing.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rename them</source>
        <extracomment>analysis/captures/writing.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} holds {dtype}, which a capture cannot store</source>
        <extracomment>analysis/captures/writing.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>use integers or floats</source>
        <extracomment>analysis/captures/writing.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the text of {key} is {size:,} bytes long</source>
        <extracomment>analysis/captures/writing.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shorten it to {most:,}</source>
        <extracomment>analysis/captures/writing.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{key} {value:g} is no value of {dtype} samples</source>
        <extracomment>analysis/captures/writing.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>correct the scaling</source>
        <extracomment>analysis/captures/writing.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the time before the code sets must lie within 0 and {most_s:g} s, got {came_s:g} s</source>
        <extracomment>analysis/control_unit/debounce.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>enter it in seconds</source>
        <extracomment>analysis/control_unit/debounce.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a fault counter must count up by 1 or more, down by 0 or more, to a limit of 1 or more; got {up}, {down} and {limit}</source>
        <extracomment>analysis/control_unit/debounce.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>correct the counter</source>
        <extracomment>analysis/control_unit/debounce.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>record {record} has a sample every {sample_ms:.3g} ms, and the control unit reads every {reading_ms:.3g} ms</source>
        <extracomment>analysis/control_unit/replay.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose a control unit that reads no faster than the record</source>
        <extracomment>analysis/control_unit/replay.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the fastest change must be above 0 V/s, got {came:g}</source>
        <extracomment>analysis/control_unit/rules.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>enter it in V/s</source>
        <extracomment>analysis/control_unit/rules.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the largest disagreement must be above 0 V, got {came:g}</source>
        <extracomment>analysis/control_unit/rules.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>enter it in volts</source>
        <extracomment>analysis/control_unit/rules.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a control unit reads every {least_ms:g} to {most_ms:g} ms, got {came_ms:g} ms</source>
        <extracomment>analysis/control_unit/rules.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>enter the time between two readings</source>
        <extracomment>analysis/control_unit/rules.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Probe the signal at both ends at once and wiggle the harness section by section; look at the sensor's pins.</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unplug this sensor, then each other one on the same feed: does the reference return?</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure the drop from sensor ground to battery negative with the consumers on, then unplug this sensor: does it go?</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure the real height, look at the link, and check that the profile is the right one.</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Capture the new sensor in the same way and compare; calibrate it by the maker's method.</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Capture the new sensor in the same way and compare.</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record the ground with the sensor plugged in and the ignition on.</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record the reference with the sensor plugged in and the ignition on.</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record {record}: {action}.</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sweep the arm slowly through its whole travel, four times, hands off the harness.</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold the arm still at {place:.0f} % for ten seconds, hands off, and record it.</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record the second track in the same sweeps.</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sweep through the height at which the car stands.</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wiggle the harness with the arm at rest and the signal watched.</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record faster: {rate_hz:.0f} samples a second miss most break-ups; take {enough_hz:,} or more.</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sweep past {low:.0f}–{high:.0f} % {missing} more times, slowly, hands off the harness.</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this program</source>
        <extracomment>analysis/diagnosis/checks.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <extracomment>analysis/diagnosis/checks.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sensor ground</source>
        <extracomment>analysis/diagnosis/checks.py, analysis/diagnosis/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reference</source>
        <extracomment>analysis/diagnosis/checks.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ground, steadiness</source>
        <extracomment>analysis/diagnosis/checks.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reference, steadiness</source>
        <extracomment>analysis/diagnosis/checks.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signal at rest</source>
        <extracomment>analysis/diagnosis/checks.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signal within its range</source>
        <extracomment>analysis/diagnosis/checks.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Output smoothness</source>
        <extracomment>analysis/diagnosis/checks.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Output smoothness, second track</source>
        <extracomment>analysis/diagnosis/checks.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both tracks agree</source>
        <extracomment>analysis/diagnosis/checks.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sampling</source>
        <extracomment>analysis/diagnosis/checks.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The capture is no measurement of the sensor: {text}.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The probes measured what they should.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} was not recorded.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} is not good: {reading}.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} is not good: {reading}, moving by {moved_mv:.0f} mV.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} reads {reading}, too near its limit to tell.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} is good: {reading}, but was not watched during the sweep.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} is good: {reading} and holds still.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{level_mv:.0f} mV</source>
        <extracomment>analysis/diagnosis/evidence.py, analysis/diagnosis/summary.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{level_v:.2f} V</source>
        <extracomment>analysis/diagnosis/evidence.py, analysis/diagnosis/summary.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The reference</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The harness was not wiggled with the signal watched.</source>
        <extracomment>analysis/diagnosis/evidence.py, analysis/reports/customer_words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The signal breaks up while the harness is wiggled and the arm rests.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wiggling the harness does not disturb the signal.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The output breaks up at the same spot every time: {start:.1f}–{stop:.1f} % of travel, on {noisy} of {passes} crossings.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It breaks up in both directions.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was seen in one direction only.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The arm was not held still in the spot: a probe or loom that moves with it is not ruled out.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At rest in the spot the reading wanders by itself, hands off.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At rest in the spot the reading was quiet; a loom that moves with the arm is not ruled out.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It improved while being moved: the last crossings are clean. That is not cured.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Away from any band the signal follows the arm without a break.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The signal also breaks up at moments that belong to no place on the travel.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The two tracks agree: {apart_mv:.0f} mV apart.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The two tracks disagree: {apart_mv:.0f} mV apart.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The two tracks may disagree: {apart_mv:.0f} mV apart.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both tracks were recorded.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{title} has two tracks; only one was recorded.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No sweep of the arm was recorded.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The travel tested is {low:.0f}–{high:.0f} %; where the arm normally rests was not recorded.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The travel tested, {low:.0f}–{high:.0f} %, includes where the arm rests, {rest:.0f} %.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The travel tested, {low:.0f}–{high:.0f} %, leaves out where the arm rests, {rest:.0f} %.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The signal was probed at both ends of its wire.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wiring between sensor and control unit: not shown, since only one end was probed.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This recorder sees break-up down to {floor:.2f} % of the reference.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Break-up below {floor:.1f} % of the reference cannot be seen in this capture; a new track stays within {limit} %. It cannot prove a track as new.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No known sensor profile was named: a potentiometer with a contact track on {supply_v:.0f} V is assumed.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no record holds a signal channel with two samples or more</source>
        <extracomment>analysis/diagnosis/examine.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>say which channel is the signal, or record the signal wire</source>
        <extracomment>analysis/diagnosis/examine.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{lost:.0%} of the samples are missing</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>save the record again</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{over:.0%} of the samples are beyond the recorder's range</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose a larger range</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the voltage is negative</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>swap the probe and the return lead</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the voltage swings about nought and falls back</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set the input to DC coupling</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set the probe's attenuation to what the probe is</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the readings are ten times too large</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the readings are ten times too small</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>check that the plug is on, the probe sits on the signal wire and the arm really moves</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the signal does not change while the arm is said to move</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the sensor was unplugged while it was swept</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plug it in and sweep again</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the reference reads {level:.2f} V: no feed</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>switch the ignition on, wake the module</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the signal probe hums about nought: it hung in the air</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>put the probe back and repeat</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the signal probe slipped off at {begun:.1f} s: from there it only hums</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all channels move by the same volts: the return clip is poor</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clip the return to clean metal and repeat</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the signal stands above the reference, which no sensor can do: a probe is on the wrong wire</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>check which wire each probe touches, and repeat</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is a duty-cycle or digital sensor, which this method does not judge</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the signal knows two levels only</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} is not TOML: {error}</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>correct that line</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: based_on must name a built-in profile, got {base!r}</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose one of: {known}</source>
        <extracomment>analysis/diagnosis/profile_schema.py, analysis/diagnosis/profiles.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lower-case letters, digits and single hyphens</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no such table</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inside valid_v [{start}, {stop}]</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>other than {value}</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there where lower is not</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>neither</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at most upper ({upper})</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there if tracks.second_signal is, and only then</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one of the two</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>within {least} and supply_v ({supply_v})</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a range around supply_v ({supply_v})</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: {prefix}{key} must be {rule}, got {came!r}</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>correct it in the profile</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one of {known}</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a table</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>text</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>true or false</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>above {above:g}</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least {least:g}</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at most {at_most:g}</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two ascending numbers</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no sensor profile {id_or_path!r}</source>
        <extracomment>analysis/diagnosis/profiles.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no built-in sensor profile {profile_id!r}</source>
        <extracomment>analysis/diagnosis/profiles.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the sensor profile {name} is not UTF-8 text</source>
        <extracomment>analysis/diagnosis/profiles.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>save it as UTF-8</source>
        <extracomment>analysis/diagnosis/profiles.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the sensor profile {name} cannot be read ({strerror})</source>
        <extracomment>analysis/diagnosis/profiles.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>check that the file is there and may be read</source>
        <extracomment>analysis/diagnosis/profiles.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: the id {id!r} belongs to a built-in profile</source>
        <extracomment>analysis/diagnosis/profiles.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose another id</source>
        <extracomment>analysis/diagnosis/profiles.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>breaks up in the band on {count} crossing</source>
        <extracomment>analysis/diagnosis/summary.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>breaks up in the band on {count} crossings</source>
        <extracomment>analysis/diagnosis/summary.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>breaks up</source>
        <extracomment>analysis/diagnosis/summary.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ground stands at {reading}</source>
        <extracomment>analysis/diagnosis/summary.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ground moves by {reading}</source>
        <extracomment>analysis/diagnosis/summary.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reference stands at {reading}</source>
        <extracomment>analysis/diagnosis/summary.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reference moves by {reading}</source>
        <extracomment>analysis/diagnosis/summary.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>signal reaches {reading}</source>
        <extracomment>analysis/diagnosis/summary.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the tracks differ by {reading}</source>
        <extracomment>analysis/diagnosis/summary.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} crossing, clean</source>
        <extracomment>analysis/diagnosis/summary.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} crossings, clean</source>
        <extracomment>analysis/diagnosis/summary.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{reading}, steady</source>
        <extracomment>analysis/diagnosis/summary.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>steady</source>
        <extracomment>analysis/diagnosis/summary.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>worn resistive track</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dirt or moisture on the track</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a loom that moves with the arm</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fault inside the sensor at this position</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>broken strand or loose terminal in the signal wire</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the sensor's own pins</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wiring of the reference</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another sensor on the same feed</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this sensor pulling it down</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the control unit</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ground point or splice</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wiring of the sensor ground</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the control unit's ground</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the height itself</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a bent or disconnected link</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the wrong sensor or profile</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the readings contradict each other</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This capture cannot be judged: {text}.</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No fault was seen in {tested}.</source>
        <extracomment>analysis/diagnosis/verdict.py, analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The track is worn at {spans} of travel: {crossed}.</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The track is worn at {spans} of travel of the second track: {crossed}.</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sensor's output breaks up at {spans} of travel: {crossed}.</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sensor's output breaks up at {spans} of travel of the second track: {crossed}.</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The signal breaks up at moments, not at a place: its wire or the sensor's pins make poor contact.</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The reference is not what it should be, and the signal is a share of it.</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sensor ground is not what it should be, and the signal is read against it.</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The signal rests outside its valid range without breaking up: the sensor may be telling the truth.</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This capture does not decide it.</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no crossings</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the output broke up on {noisy} of {passes} crossings</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what was recorded</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{low:.0f}–{high:.0f} % of travel, {count} crossing</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{low:.0f}–{high:.0f} % of travel, {count} crossings</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A vehicle on air or height-adjustable suspension can drop without warning, and moving a live sensor makes it inflate or dump. Put it on stands rated for it, disable levelling by the maker's method, and only then connect and sweep.</source>
        <extracomment>analysis/reports/cautions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An electronic throttle traps fingers: sweep pedals with the engine off and the intake closed, hands out of the bore.</source>
        <extracomment>analysis/reports/cautions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Never probe airbag or high-voltage circuits with this procedure. Back-probe the plug; do not pierce the insulation.</source>
        <extracomment>analysis/reports/cautions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After a sensor is replaced the maker's height calibration applies.</source>
        <extracomment>analysis/reports/cautions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The vehicle maker's procedure, local codes and a licensed technician's judgement stand above this tool.</source>
        <extracomment>analysis/reports/cautions.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pass</source>
        <extracomment>analysis/reports/checks.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fail</source>
        <extracomment>analysis/reports/checks.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cannot tell</source>
        <extracomment>analysis/reports/checks.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>proved</source>
        <extracomment>analysis/reports/checks.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>refuted</source>
        <extracomment>analysis/reports/checks.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not shown</source>
        <extracomment>analysis/reports/checks.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no limit</source>
        <extracomment>analysis/reports/checks.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at most {limit}</source>
        <extracomment>analysis/reports/checks.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least {limit}</source>
        <extracomment>analysis/reports/checks.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{lower} to {upper}</source>
        <extracomment>analysis/reports/checks.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{title} {reading}, no limit stated: {result}.</source>
        <extracomment>analysis/reports/checks.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cannot tell, the uncertainty reaches across the limit</source>
        <extracomment>analysis/reports/checks.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{title} {reading}, allowed {limit}: {said}.</source>
        <extracomment>analysis/reports/checks.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>very likely</source>
        <extracomment>analysis/reports/confidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>likely</source>
        <extracomment>analysis/reports/confidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more likely than not</source>
        <extracomment>analysis/reports/confidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>possible</source>
        <extracomment>analysis/reports/confidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not rated</source>
        <extracomment>analysis/reports/confidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{words} ({odds} in 100)</source>
        <extracomment>analysis/reports/confidence.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sensor tells the car how high it stands at this corner. It is a little arm that slides along a track; the voltage it gives should follow the arm smoothly.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sensor tells the engine how far the pedal or the throttle is open. It is an arm that slides along a track; the voltage it gives should follow the arm smoothly.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sensor tells the control unit a position. It is an arm that slides along a track; the voltage it gives should follow the arm smoothly.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At one place it drops out instead, each time the arm passes: the car is told a wrong position for moments.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Here it drops out at any position, as a loose contact does. A new sensor would not cure that.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sensor can only be as good as its supply, and that was not as it should be. A new sensor may not cure that.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sensor can only be as good as its ground, and that was not as it should be. A new sensor may not cure that.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It reads beyond its normal range without breaking up. It may be telling the truth: about the height, a bent link, or a part that does not belong there.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was recorded is not the sensor's own signal, so that nothing can be concluded from it.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It did, wherever it was tested. That holds for the travel and the conditions of the test; a fault that comes and goes may have been away.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was recorded fits more than one explanation, or leaves out what would decide it.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The car may level itself wrongly, without warning, and the lamps may point too high. Nobody should reach under it unless it stands on stands. If it sits visibly low or leans, it should not be driven. Otherwise drive with care; the maker's instructions decide.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The engine may hesitate, jerk or lose power without warning. It should not be driven further than the workshop until this is cleared up; the maker's instructions decide.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The system that uses this sensor may act on a wrong position. What may be driven is for the maker's instructions and the technician to say.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This measurement does not answer that. As long as the complaint is there, it is to be taken seriously: the technician and the maker's instructions decide.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This measurement gives no reason not to. It does not answer the complaint by itself; the technician and the maker's instructions decide.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A track that breaks up does not heal. As a rule the place grows and the complaint comes more often.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A fault inside the sensor does not heal; the complaint will come back.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A bad contact comes and goes, and as a rule comes more often, above all in the wet and on bad roads.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other systems on the same supply may be disturbed too.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other systems on the same ground may be disturbed too.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The system that uses this sensor may go on acting on a wrong position.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This cannot be said before the cause is found.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing follows from this measurement. If the complaint comes back, it should be measured again then.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Replace the position sensor, calibrate it by the maker's method, and measure again in the same way.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find the bad contact in the signal wire, its plugs or the sensor's pins, repair it, and measure again.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find what disturbs the supply of the sensor, before any part is replaced, and measure again.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find the bad ground connection, before any part is replaced, repair it, and measure again.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure the height, look at the linkage and check that the part is the right one, before it is replaced.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure again. No part should be bought on this measurement.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No part should be replaced on this measurement. If the complaint goes on, look further.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure what is missing. No part should be bought on this measurement.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Confirm it before a part is bought: measure again what page two lists as not shown, or set the sensor beside a known good one.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wiring beyond the points that were probed, other sensors, other causes of the complaint, and whatever the system itself has suffered. Nobody opened the sensor.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Anything that was not measured: other sensors, wiring beyond the points that were probed, and other causes of the complaint.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vehicle</source>
        <extracomment>analysis/reports/customer_page.py, analysis/reports/evidence_page.py, analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Registration</source>
        <extracomment>analysis/reports/customer_page.py, analysis/reports/evidence_page.py, analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Odometer</source>
        <extracomment>analysis/reports/customer_page.py, analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Job</source>
        <extracomment>analysis/reports/customer_page.py, analysis/reports/evidence_page.py, analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured on</source>
        <extracomment>analysis/reports/customer_page.py, analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sensor</source>
        <extracomment>analysis/reports/customer_page.py, analysis/reports/evidence_page.py, analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Labour</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calibration</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>calibrated by the maker's method</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fault codes cleared, and none came back</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>heights or end positions measured</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>road test done</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>captured again in the same way</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For the customer</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was complained of</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fault codes: {codes}, and {more} more on the evidence page.</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fault codes: {codes}</source>
        <extracomment>analysis/reports/customer_page.py, analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was found</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not shown: {points}</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The program's confidence: {odds} in 100. Of a hundred findings with this confidence about as many are right; it is not a degree of wear.</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it means</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Can it be driven?</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If it is left</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What we recommend</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What that does not include</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes of the technician</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Our offer</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I approve the work above.</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I decline it.</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signature of the customer</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tax</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tax, {percent:g} %</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Total</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After the repair</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sensor ground was not recorded.</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The reference was not recorded.</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whether the probes sat right was not shown.</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That it is the same spot every time was not shown.</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the arm normally rests was not tested.</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Very likely</source>
        <extracomment>analysis/reports/customer_words.py, analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Probably</source>
        <extracomment>analysis/reports/customer_words.py, analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More likely than not,</source>
        <extracomment>analysis/reports/customer_words.py, analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is possible, but not shown, that</source>
        <extracomment>analysis/reports/customer_words.py, analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{sure} the position sensor is worn: its output breaks up{place}.</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{sure} the position sensor is faulty: its output breaks up{place}.</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{sure} the fault is a bad contact in the signal wire or its plugs, not a worn sensor.</source>
        <extracomment>analysis/reports/customer_words.py, analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{sure} the fault is in the supply that feeds the position sensor. What pulls it down has yet to be found.</source>
        <extracomment>analysis/reports/customer_words.py, analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{sure} the fault is in the ground connection of the position sensor. Where has yet to be found.</source>
        <extracomment>analysis/reports/customer_words.py, analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{sure} the position sensor reads outside its normal range. The height and the linkage come first; then the sensor.</source>
        <extracomment>analysis/reports/customer_words.py, analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The measurement cannot be used and has to be made again. It says nothing about the vehicle yet.</source>
        <extracomment>analysis/reports/customer_words.py, analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No fault was seen in the position sensor and the wires that were measured{tested}.</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The measurement does not show yet what is wrong. More has to be measured before a part is bought.</source>
        <extracomment>analysis/reports/customer_words.py, analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The program found a place where the sensor's output breaks up; the technician does not accept that finding. It is not shown what is wrong.</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> at the same place of its travel (around {travel_percent:.0f} %) on {noisy} of {passes} crossings</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> and at one other place</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> and at {more} other places</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, in {first:.0f}–{last:.0f} % of its travel (with gaps)</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, in {first:.0f}–{last:.0f} % of its travel</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>VIN</source>
        <extracomment>analysis/reports/evidence_page.py, analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Technician</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mounting</source>
        <extracomment>analysis/reports/evidence_page.py, analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part number</source>
        <extracomment>analysis/reports/evidence_page.py, analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Earlier repairs</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recorder</source>
        <extracomment>analysis/reports/evidence_page.py, analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Serial number</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calibrated</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A fingerprint proves that the file is unchanged since the fingerprint was taken. It does not prove who took it, nor that the capture was true.</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>accepted by the technician</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>edges adjusted by the technician</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dismissed by the technician</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>signal</source>
        <extracomment>analysis/reports/evidence_page.py, analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>second signal</source>
        <extracomment>analysis/reports/evidence_page.py, analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reference</source>
        <extracomment>analysis/reports/evidence_page.py, analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ground</source>
        <extracomment>analysis/reports/evidence_page.py, analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>supply</source>
        <extracomment>analysis/reports/evidence_page.py, analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>zero</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>check</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wiggle</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sweep</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hold</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>road</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tap</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>heat</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cold</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unplugged</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A limit that names a maker and a model is that maker's published service figure. Where it is another model than this car, it stands in for this car's own, which was not at hand.</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none disclosed</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For whoever measures this again</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Evidence</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The car and the job</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fault code</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The standard's wording (SAE J2012)</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How it was measured</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wire</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plug and pin</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Probed at</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Against</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accuracy</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record</source>
        <extracomment>analysis/reports/evidence_page.py, analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was done</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>State of the car</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it showed</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not stated; assumed</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>±({gain_percent:g} % + {offset_mv:g} mV), stated</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plugged in</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ignition {value}</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>engine {value}</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>load: {value}</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{value} °C</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was shown or ruled out, and by which record</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>State</source>
        <extracomment>analysis/reports/evidence_page.py, analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Statement</source>
        <extracomment>analysis/reports/evidence_page.py, analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Records</source>
        <extracomment>analysis/reports/evidence_page.py, analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was not tested, or not shown</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it was set beside</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Capture</source>
        <extracomment>analysis/reports/evidence_page.py, analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found there</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>SHA-256 of its file</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Words of page one changed by the technician. The program's were: {text}</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marker of the technician: {words}</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the technician said</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Band at {place}, {sure}: {choice}</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{first}, to {place}.</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>SHA-256 of the file</source>
        <extracomment>analysis/reports/evidence_page.py, analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fingerprint of the content</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sensor profile</source>
        <extracomment>analysis/reports/evidence_page.py, analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Analysis version</source>
        <extracomment>analysis/reports/evidence_page.py, analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What this was made from</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} sensor/switch {letter} circuit</source>
        <extracomment>analysis/reports/fault_codes.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} sensor/switch {letter} circuit range/performance</source>
        <extracomment>analysis/reports/fault_codes.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} sensor/switch {letter} circuit low</source>
        <extracomment>analysis/reports/fault_codes.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} sensor/switch {letter} circuit high</source>
        <extracomment>analysis/reports/fault_codes.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} sensor/switch {letter} circuit intermittent</source>
        <extracomment>analysis/reports/fault_codes.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Throttle/pedal position</source>
        <extracomment>analysis/reports/fault_codes.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sensor reference voltage {letter} circuit/open</source>
        <extracomment>analysis/reports/fault_codes.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sensor reference voltage {letter} circuit low</source>
        <extracomment>analysis/reports/fault_codes.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sensor reference voltage {letter} circuit high</source>
        <extracomment>analysis/reports/fault_codes.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Throttle/pedal position sensor/switch {pair} voltage correlation</source>
        <extracomment>analysis/reports/fault_codes.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>defined by the maker</source>
        <extracomment>analysis/reports/fault_codes.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>see SAE J2012</source>
        <extracomment>analysis/reports/fault_codes.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Odometer, km</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Complaint</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fault codes</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recorder serial</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recorder calibrated</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What this does not say</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to do next</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken as given</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Made from</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before you connect or sweep</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{kind}: {travel}, {volts} on the {track}; {confidence}; breaks up on {noisy} of {crossings}{falls}.</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Possible band, watch it</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Band</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, towards ground</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, towards the reference</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, both ways</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Possible causes, likeliest first: {causes}.</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>% of travel</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edges ±</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Volts</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Track</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Confidence</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Breaks up on</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Worst</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bands</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{confidence}, watch</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{noisy} of {passes}</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chain of evidence</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Result</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Allowed</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whose limit</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not stated</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checks</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Break-up below {floor} of the applied voltage cannot be seen on the {track} in this capture.</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No travel was tested.</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Travel tested</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{travel}: {crossings} or more everywhere</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{travel}: {crossings} or more; fewer than {enough} at {places}</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{quantity} (uncertainty unknown)</source>
        <extracomment>analysis/reports/quantities.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{start} to {stop}</source>
        <extracomment>analysis/reports/quantities.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{stretch} % of travel</source>
        <extracomment>analysis/reports/quantities.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{stretch} V</source>
        <extracomment>analysis/reports/quantities.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} crossing</source>
        <extracomment>analysis/reports/quantities.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} crossings</source>
        <extracomment>analysis/reports/quantities.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A good sensor, as modelled (not measured)</source>
        <extracomment>analysis/reports/report_pictures.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This sensor</source>
        <extracomment>analysis/reports/report_pictures.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far the signal breaks up, in % of the supply, along the sensor's travel: flat is good. Each faint line is one pass of the arm, the bold line the worst of them; a hatched stretch is a place where it breaks up again and again, and along a grey foot nothing was tested.</source>
        <extracomment>analysis/reports/report_pictures.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{first} The grey floor is what this recorder cannot see.</source>
        <extracomment>analysis/reports/report_pictures.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The signal while the arm passes the place (hatched), record {record}: it should follow the dashed line.</source>
        <extracomment>analysis/reports/report_pictures.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The deepest disturbance, record {record} at {time_s:.2f} s.</source>
        <extracomment>analysis/reports/report_pictures.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>without a date</source>
        <extracomment>analysis/reports/subject.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same place, measured later ({date}): no fault found</source>
        <extracomment>analysis/reports/subject.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same place, measured later ({date})</source>
        <extracomment>analysis/reports/subject.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>without a name</source>
        <extracomment>analysis/reports/subject.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another sensor, in which no fault was found: {name} ({date})</source>
        <extracomment>analysis/reports/subject.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another sensor: {name} ({date})</source>
        <extracomment>analysis/reports/subject.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time, s</source>
        <extracomment>analysis/reports/trace_picture.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>signal, V</source>
        <extracomment>analysis/reports/trace_picture.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured</source>
        <extracomment>analysis/reports/trace_picture.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a good sensor for the same movement, modelled</source>
        <extracomment>analysis/reports/trace_picture.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The signal in volts from {start:.2f} to {stop:.2f} s of record {record}, where it breaks up most clearly.</source>
        <extracomment>analysis/reports/trace_picture.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>travel, %</source>
        <extracomment>analysis/reports/track_picture.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>break-up, %</source>
        <extracomment>analysis/reports/track_picture.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Break-up of the sensor's output along its travel: it stands out between {start:.0f} and {stop:.0f} per cent of travel.</source>
        <extracomment>analysis/reports/track_picture.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Break-up of the sensor's output along its travel: no place stands out.</source>
        <extracomment>analysis/reports/track_picture.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{first} Below it, on the same scale: {second}.</source>
        <extracomment>analysis/reports/track_picture.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sensor track worn</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sensor output breaks up</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signal wiring faulty</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reference voltage faulty</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sensor ground faulty</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signal out of range</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure again</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No fault found</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not shown either way</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It says how the output behaves; nobody opened the sensor. It does not say that this is the only fault, and it clears no wiring beyond the points that were probed.</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It says that the output breaks up at this position, not why: nobody opened the sensor. It clears no wiring beyond the points that were probed.</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It does not say that the harness must be replaced: the bad contact may be a plug, a splice or the sensor's own pins. Find the place first.</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It proves nothing against this sensor or the control unit: whatever else hangs on the same supply can pull it down.</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It proves nothing against this sensor or the control unit: the ground point, a splice or what else uses it can lift it.</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It does not say that the sensor is bad: a vehicle at its stop, a bent link or the wrong sensor profile reads the same.</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It says nothing about the vehicle, neither good nor bad.</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It holds for the travel and the conditions that were tested, and no others. A fault that comes and goes may have been away.</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It clears neither the sensor nor the wiring.</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{sure} the position sensor is worn: {output}.</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{sure} the position sensor is faulty: {output}.</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its output breaks up</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its output breaks up at the same place of its travel (around {place} %) on {noisy} of {passes} crossings</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{worst} and at {count} other place</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{worst} and at {count} other places</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the position sensor and the wires that were measured</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the position sensor and the wires that were measured, in {first}–{last} % of its travel</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the position sensor and the wires that were measured, in {first}–{last} % of its travel (with gaps)</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheet {page} of {pages}</source>
        <extracomment>analysis/reports/whole_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>position sensor</source>
        <extracomment>analysis/reports/whole_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test report: {sensor}, {mounting}</source>
        <extracomment>analysis/reports/whole_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test report: {sensor}</source>
        <extracomment>analysis/reports/whole_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{file} · SHA-256 {digest}… · report made on {today}</source>
        <extracomment>analysis/reports/whole_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{file} · SHA-256 {digest}…</source>
        <extracomment>analysis/reports/whole_report.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the review beside this capture cannot be opened</source>
        <extracomment>analysis/review/sidecar.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{problem}; it is left as it is, and a new one begins in memory</source>
        <extracomment>analysis/review/sidecar.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{problem}; a new one begins, and this one is kept under another name when the new one is saved</source>
        <extracomment>analysis/review/sidecar.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>check who may read it</source>
        <extracomment>analysis/review/sidecar.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another program changed the review of this capture since it was opened here</source>
        <extracomment>analysis/review/sidecar.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>take its review, or keep this one; neither is lost</source>
        <extracomment>analysis/review/sidecar.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file of the review is far too long</source>
        <extracomment>analysis/review/sidecar.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>look what it is</source>
        <extracomment>analysis/review/sidecar.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the review is damaged: it is no text</source>
        <extracomment>analysis/review/sidecar.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>begin a new one</source>
        <extracomment>analysis/review/sidecar.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the review beside this capture was made from another one, or the capture was changed since</source>
        <extracomment>analysis/review/sidecar.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the review that lies there cannot be renamed</source>
        <extracomment>analysis/review/sidecar.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>see who may write there</source>
        <extracomment>analysis/review/sidecar.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a thousand reviews are kept aside in this folder</source>
        <extracomment>analysis/review/sidecar.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>move some of them away</source>
        <extracomment>analysis/review/sidecar.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>begin a new review; the file is kept aside</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the review is nested too deeply</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the review is damaged at line {lineno}</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the review holds a number that is none</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the review</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the capture of the review</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>decision {number}</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{where} is no object</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{where} lacks {key!r}</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at or after {first!r}</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a list</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{key!r} of {where} is not {wanted}</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file is no review of Wornband's</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the review was written by a later version (schema {version})</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open it with that version</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>marker {number}</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its own</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a track</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a decision</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what was found</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two edges</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two edges in order</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Three-wire position sensor, 5 V</source>
        <extracomment>analysis/diagnosis/sensor_profiles/generic-ratiometric.toml</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Infiniti QX56 2009, DTC C1806</source>
        <extracomment>analysis/diagnosis/sensor_profiles/generic-ratiometric.toml</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nissan Quest 1994, Ground Inspection</source>
        <extracomment>analysis/diagnosis/sensor_profiles/generic-ratiometric.toml</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saturn Sky 2009, DTC P2122 or P2123, Circuit/System Testing</source>
        <extracomment>analysis/diagnosis/sensor_profiles/generic-ratiometric.toml</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bourns, training pages, Output Smoothness: typical limit of a new track</source>
        <extracomment>analysis/diagnosis/sensor_profiles/generic-ratiometric.toml</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accelerator pedal, tracks that go opposite ways</source>
        <extracomment>analysis/diagnosis/sensor_profiles/pedal-inverted.toml</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>track 1 falls while track 2 rises: Mazda CX-9 2009, APP sensor; volts: common practice, no source</source>
        <extracomment>analysis/diagnosis/sensor_profiles/pedal-inverted.toml</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opposite slopes between ground and 5 V: Saturn VUE 2007, DTC P2135; 200 mV for 200 ms: Honda Civic Si 2009, DTC P2135</source>
        <extracomment>analysis/diagnosis/sensor_profiles/pedal-inverted.toml</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accelerator pedal, second track a fixed step lower</source>
        <extracomment>analysis/diagnosis/sensor_profiles/pedal-offset.toml</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>released 1.55-1.62 V, pressed 3.49-4.09 V: Mazda6 2011, APP Sensor Inspection; margins: common practice, no source</source>
        <extracomment>analysis/diagnosis/sensor_profiles/pedal-offset.toml</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>released 1.01-1.07 V, pressed 2.94-3.54 V: Mazda6 2011, APP Sensor Inspection; margins: common practice, no source</source>
        <extracomment>analysis/diagnosis/sensor_profiles/pedal-offset.toml</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>step: Mazda6 2011, APP Sensor Inspection; 200 mV for 200 ms: Honda Civic Si 2009, DTC P2135</source>
        <extracomment>analysis/diagnosis/sensor_profiles/pedal-offset.toml</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accelerator pedal, second track at half the volts</source>
        <extracomment>analysis/diagnosis/sensor_profiles/pedal.toml</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>released 0.80 V, pressed 4.55 V: Mazda CX-30 2019, APP Sensor Inspection; margins: common practice, no source</source>
        <extracomment>analysis/diagnosis/sensor_profiles/pedal.toml</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>released 0.40 V, pressed 2.28 V: Mazda CX-30 2019, APP Sensor Inspection; margins: common practice, no source</source>
        <extracomment>analysis/diagnosis/sensor_profiles/pedal.toml</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ratio: Mazda CX-30 2019, APP Sensor Inspection; 200 mV for 200 ms: Honda Civic Si 2009, DTC P2135</source>
        <extracomment>analysis/diagnosis/sensor_profiles/pedal.toml</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ride-height sensor without a contact, 5 V</source>
        <extracomment>analysis/diagnosis/sensor_profiles/ride-height-contactless.toml</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ride-height sensor, 5 V</source>
        <extracomment>analysis/diagnosis/sensor_profiles/ride-height.toml</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>HUMMER H2 2009, DTC C0625 or C0630 (range); rest mid-travel: common practice, no source</source>
        <extracomment>analysis/diagnosis/sensor_profiles/ride-height.toml</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>HUMMER H2 2009, DTC C0625 or C0630</source>
        <extracomment>analysis/diagnosis/sensor_profiles/ride-height.toml</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Throttle position sensor, 5 V</source>
        <extracomment>analysis/diagnosis/sensor_profiles/throttle.toml</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closed 0.4-0.6 V, open up to 4.5 V: Kia Sephia 1997 and Isuzu Oasis 1996, Throttle Position Sensor; margins: common practice, no source</source>
        <extracomment>analysis/diagnosis/sensor_profiles/throttle.toml</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{first} and {second}</source>
        <extracomment>analysis/wording.py</extracomment>
        <translation type="vanished"></translation>
    </message>
</context>
<context>
    <name>trouble</name>
    <message>
        <source> It was written to {file}.</source>
        <extracomment>app/trouble.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{doing}: something unforeseen went wrong ({kind}: {text}).</source>
        <extracomment>app/trouble.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Working in the window</source>
        <extracomment>app/trouble.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>words</name>
    <message>
        <source>Signal</source>
        <extracomment>app/words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Second signal</source>
        <extracomment>app/words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reference</source>
        <extracomment>app/words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ground</source>
        <extracomment>app/words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply</source>
        <extracomment>app/words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zero</source>
        <extracomment>app/words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check</source>
        <extracomment>app/words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wiggle</source>
        <extracomment>app/words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sweep</source>
        <extracomment>app/words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold</source>
        <extracomment>app/words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Road</source>
        <extracomment>app/words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tap</source>
        <extracomment>app/words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heat</source>
        <extracomment>app/words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cold</source>
        <extracomment>app/words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet</source>
        <extracomment>app/words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unplugged</source>
        <extracomment>app/words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record</source>
        <extracomment>app/words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drop</source>
        <extracomment>app/words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rise</source>
        <extracomment>app/words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ringing</source>
        <extracomment>app/words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spike</source>
        <extracomment>app/words.py</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
