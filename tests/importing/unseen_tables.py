# ruff: noqa: E501 - a table is easier to see as it is
"""Tables as a stranger writes them, first ninety.

Written by hand before the parser was looked at, in invented layouts; the twelve samples are those of the other tables.
Record of the first try, before anything was mended for them: of 99, 52 were right, 31 said what to choose (17 of
these asked for what the table says, or named a wrong reason), and 16 were wrong or lost something (7 of these with a
note). Those that need more than one record, many rows or a note are in `test_unseen_tables`.
"""

from __future__ import annotations

from collections.abc import Callable

from analysis.captures.model import Role
from analysis.importing.wishes import Wishes
from tests.importing.strange_tables import REFERENCE_V, ROWS, SIGNAL_V, Strange, comma, rows_as, with_cells

_NAN, _INF = float("nan"), float("inf")


def _rows(make: Callable[[int, float, float, float], str]) -> str:
    """A piece of text a sample: of its number, its time, the signal and the reference."""
    return "".join(make(n, t, s, r) for n, t, s, r in ROWS)


_TABLE = rows_as("{t:.3f};{s};{r}")
_LINES = _TABLE.splitlines()

UNSEEN = (
    Strange("pages", ("".join(f"Page {p+1} of 3\f\ntime;signal;ref\ns;V;V\n" + "\n".join(_LINES[4*p:4*p+4]) + "\n" for p in range(3))).encode()),
    Strange("heading again", ("time;signal;ref\n" + "\n".join(_LINES[:6]) + "\n\ntime;signal;ref\n" + "\n".join(_LINES[6:]) + "\n").encode()),
    Strange("transposed", ("time;" + ";".join(f"{t:.3f}" for _, t, _, _ in ROWS) + "\nsignal;" + ";".join(map(str, SIGNAL_V)) + "\nref;" + ";".join(map(str, REFERENCE_V)) + "\n").encode()),
    Strange("percent", ("time [s];signal [%];ref [V]\n" + _rows(lambda n, t, s, r: f"{t:.3f};{s*20:.1f};{r}\n")).encode(), says="is in %, not in volts", wishes=Wishes(channels={"signal": Role.SIGNAL, "ref": Role.REFERENCE}, factors={"signal": 0.05})),
    Strange("percent in cells", ("time;signal;ref\n" + _rows(lambda n, t, s, r: f"{t:.3f};{s*20:.1f}%;{r}\n")).encode(), says="is in %, not in volts", wishes=Wishes(channels={"signal": Role.SIGNAL, "ref": Role.REFERENCE}, factors={"signal": 0.05})),
    Strange("second falling", ("time;track A;track B;feed\n" + _rows(lambda n, t, s, r: f"{t:.3f};{s};{5-s};{r}\n")).encode(), others={Role.SECOND_SIGNAL: (4.5, 3.75, 3.0, 2.25, 1.5, 0.75, 0.5, 1.25, 2.0, 2.75, 3.5, 4.25)}),
    Strange("zones", (_rows(lambda n, t, s, r: f"2026-03-04T09:14:07.{500+n}+01:00;{s};{r}\n")).encode()),
    Strange("summer time ends", ("when;signal;ref\n" + _rows(lambda n, t, s, r: f"2026-10-25T02:{'59:59' if n<5 else '00:00'}.{(995+n)%1000:03d}+0{2 if n<5 else 1}:00;{s};{r}\n")).encode(), says="runs backwards at row 6", wishes=Wishes(interval_s=1e-3)),
    Strange("summer time ends, no zone", ("when;signal;ref\n" + _rows(lambda n, t, s, r: f"2026-10-25T02:{'59:59' if n<5 else '00:00'}.{(995+n)%1000:03d};{s};{r}\n")).encode(), says="runs backwards at row 6", wishes=Wishes(interval_s=1e-3)),
    Strange("duplicates", ("time;signal;ref\n" + _rows(lambda n, t, s, r: f"{n//2*2/1000:.3f};{s};{r}\n")).encode()),
    Strange("SR=1k", ("SR=1k\nsignal;ref\n" + rows_as("{s};{r}")).encode()),
    Strange("dt=0.001", ("# dt=0.001\nsignal;ref\n" + rows_as("{s};{r}")).encode()),
    Strange("Delta(s)", ("Delta(s);1e-3\nsignal;ref\n" + rows_as("{s};{r}")).encode()),
    Strange("Abtastrate [Hz]", ("Abtastrate [Hz];1000\nNummer;signal;ref\n" + rows_as("{n};{s};{r}")).encode()),
    Strange("sample number + rate", ("Rate: 1000 samples/s\n\n#;signal (V);ref (V)\n" + _rows(lambda n,t,s,r: f"{n+1};{s};{r}\n")).encode()),
    Strange("sci comma", ("t;u1;u2\n" + comma(rows_as("{t:.4E};{s:.4E};{r:.4E}"))).encode()),
    Strange("swiss quote", ("Zeit [µs];Signal [mV];Ref [mV]\n" + _rows(lambda n,t,s,r: f"{n*1000:,};{s*1000:,.1f};{r*1000:,.1f}\n".replace(",", "’"))).encode()),
    Strange("true minus", ("time;signal;ref\n" + _rows(lambda n,t,s,r: f"{t-.005:.3f};{s};{r}\n").replace("-", "\u2212")).encode()),
    Strange("nbsp units", ("time;signal;ref\n" + _rows(lambda n,t,s,r: comma(f"{t*1000:.1f}\u00a0ms;{s*1000:.1f}\u00a0mV;{r}\u00a0V\n"))).encode("latin-1")),
    Strange("odd units", ("Time (mSec);Wiper (VDC);Feed (Volts DC)\n" + rows_as("{m};{s};{r}")).encode()),
    Strange("odd units 2", ("Elapsed/µsec.;Wiper/kilovolt;Feed/milli-volts\n" + _rows(lambda n,t,s,r: f"{n*1000};{s/1000:.6f};{r*1000:.0f}\n")).encode()),
    Strange("underscores", ("time_ms,signal_mv,ref_mv\n" + rows_as("{m},{sm:.0f},{rm:.0f}")).encode()),
    Strange("units below in brackets row 3", ("Messung 4;;\nZeit;Signal;Ref\n[ms];[mV];[mV]\n" + rows_as("{m};{sm:.0f};{rm:.0f}")).encode()),
    Strange("cut", ("time;signal;ref\n" + _TABLE[:-3]).encode()),
    Strange("slash comments", ("// bench\ntime;signal;ref\n" + "\n".join([*_LINES[:5], "// arm at the top", *_LINES[5:]]) + "\n").encode()),
    Strange("event lines", ("time;signal;ref\n" + "\n".join([*_LINES[:5], "EVENT;arm at the top", *_LINES[5:]]) + "\n").encode()),
    Strange("remark with a line end in quotes", ('time;signal;ref;remark\n' + _rows(lambda n,t,s,r: f'{t:.3f};{s};{r};' + ('"top;\nturned ""round"""' if n==6 else '') + "\n")).encode()),
    Strange("CET", ("when;signal;ref\n" + _rows(lambda n,t,s,r: f"2026-03-04 09:14:07.{500+n} CET;{s};{r}\n")).encode()),
    Strange("ctime", ("when;signal;ref\n" + _rows(lambda n,t,s,r: f"Wed Mar  4 09:14:07.{500+n} 2026;{s};{r}\n")).encode()),
    Strange("slashed date", ("when;signal;ref\n" + _rows(lambda n,t,s,r: f"2026/03/04-09:14:07.{500+n};{s};{r}\n")).encode()),
    Strange("compact", ("when,signal,ref\n" + _rows(lambda n,t,s,r: f"20260304T091407.{500+n}Z,{s},{r}\n")).encode()),
    Strange("four colons", ("time;signal;ref\n" + _rows(lambda n,t,s,r: f"09:14:07:{500+n};{s};{r}\n")).encode()),
    Strange("ISO durations", ("time;signal;ref\n" + _rows(lambda n,t,s,r: f"PT{t:.3f}S;{s};{r}\n")).encode()),
    Strange("h m s letters", ("time;signal;ref\n" + _rows(lambda n,t,s,r: f"9h14m07.{500+n}s;{s};{r}\n")).encode()),
    Strange("hour minute second ms", ("h;min;s;ms;signal;ref\n" + _rows(lambda n,t,s,r: f"9;14;{7 if n<5 else 8};{(995+n)%1000};{s};{r}\n")).encode()),
    Strange("epoch seconds", ("time;signal;ref\n" + _rows(lambda n,t,s,r: f"1772615647.{500+n};{s};{r}\n")).encode()),
    Strange("epoch us", ("timestamp;signal;ref\n" + _rows(lambda n,t,s,r: f"{1772615647500000+n*1000};{s};{r}\n")).encode()),
    Strange("epoch ns", ("timestamp;signal;ref\n" + _rows(lambda n,t,s,r: f"{1772615647500000000+n*1000000};{s};{r}\n")).encode()),
    Strange("fraction of day", ("Uhrzeit;Signal;Ref\n" + _rows(lambda n,t,s,r: comma(f"{.384826+n/86400000:.12f};{s};{r}\n"))).encode()),
    Strange("trailing minus", ("time;signal;ref\n" + _rows(lambda n,t,s,r: f"{abs(t-.005):.3f}{'-' if n<5 else ''};{s};{r}\n")).encode()),
    Strange("parentheses", ("time;signal;ref\n" + _rows(lambda n,t,s,r: (f"({.005-t:.3f})" if n<5 else f"{t-.005:.3f}") + f";{s};{r}\n")).encode()),
    Strange("adc counts", ("ms;adc0;adc1\n" + _rows(lambda n,t,s,r: f"{n};{int(s/5*1023)};{int(r/5.01*1023)}\n")).encode(), says="--factor adc0=VOLTS --factor adc1=VOLTS"),
    Strange("min avg max", ("time;sig min;sig avg;sig max;ref avg\n" + _rows(lambda n,t,s,r: f"{t:.3f};{s-.01:.3f};{s};{s+.01:.3f};{r}\n")).encode()),
    Strange("group heading", ("Input;;Input\ntime;signal;ref\ns;V;V\n" + _TABLE).encode()),
    Strange("markdown", ("| time | signal | ref |\n|------|--------|-----|\n" + rows_as("| {t:.3f} | {s} | {r} |")).encode()),
    Strange("json lines", (_rows(lambda n,t,s,r: f'{{"t": {t:.3f}, "signal": {s}, "ref": {r}}}\n')).encode(), says="it is JSON"),
    Strange("xml", ("<?xml version='1.0'?>\n<rows>\n" + rows_as('<row t="{t:.3f}" signal="{s}" ref="{r}"/>') + "</rows>\n").encode(), says="it is XML"),
    Strange("sections", ("[Header]\nbox=3\nrate=1000\n\n[Data]\ntime;signal;ref\n" + _TABLE).encode()),
    Strange("dots at ends", ("time;signal;ref\n" + _rows(lambda n,t,s,r: f"{t:.3f};{s:+g};{r}\n".replace("0.", ".").replace("+2;", "+2.;"))).encode()),
    Strange("words for nothing", ("time;signal;ref\n" + _rows(lambda n,t,s,r: f"{t:.3f};{ {2:'n/a',3:'---',4:'NULL',5:'#N/A',7:'#DIV/0!',8:'1.#INF',9:'1.#QNAN',10:'Überlauf'}.get(n, s)};{r}\n")).encode(), signal=with_cells(SIGNAL_V, row2=_NAN, row3=_NAN, row4=_NAN, row5=_NAN, row7=_NAN, row8=_INF, row9=_NAN, row10=_NAN)),
    Strange("utf32", ("time;signal;ref\n" + _TABLE).encode("utf-32")),
    Strange("two marks", ("\ufeff\ufefftime;signal;ref\n" + _TABLE).encode()),
    Strange("cr with remarks", ("# bench\r# arm by hand\rtime;signal;ref\r" + _TABLE.replace("\n", "\r")).encode()),
    Strange("counts first", ("12 3\n" + rows_as("{t:.3f} {s} {r}")).encode()),
    Strange("long format", ("time;channel;value\n" + _rows(lambda n,t,s,r: f"{t:.3f};signal;{s}\n{t:.3f};ref;{r}\n")).encode(), says="more than one channel in turn: signal, ref"),
    Strange("long format numbers", ("time;input;volts\n" + _rows(lambda n,t,s,r: f"{t:.3f};1;{s}\n{t:.3f};2;{r}\n")).encode(), says="more than one channel in turn: 1, 2"),
    Strange("two times", ("Date;Elapsed (s);signal;ref\n" + _rows(lambda n,t,s,r: f"2026-03-04 09:14:07.{500+n};{t:.3f};{s};{r}\n")).encode()),
    Strange("units by comma", ("time, ms;signal, mV;ref, mV\n" + rows_as("{m};{sm:.0f};{rm:.0f}")).encode()),
    Strange("units in a remark", ("# columns: time signal ref\n# units: ms mV mV\n" + rows_as("{m} {sm:.0f} {rm:.0f}")).encode()),
    Strange("commas in heading", ("time (s, elapsed),signal (V, left),ref (V)\n" + rows_as("{t:.3f},{s},{r}")).encode()),
    Strange("thousands only ints", ("t [us];sig [mV];ref [mV]\n" + _rows(lambda n,t,s,r: f"{n*1000:,};{s*1000:,.0f};{r*1000:,.0f}\n")).encode()),
    Strange("three decimals comma", ("t [ms];sig [V];ref [V]\n" + _rows(lambda n,t,s,r: comma(f"{n:.3f};{s:.3f};{r:.3f}\n"))).encode()),
    Strange("rate against time", ("Sample rate: 500 Hz\ntime;signal;ref\n" + _TABLE).encode()),
    Strange("time unit above", ("Time unit: ms\nVoltage unit: mV\ntime;signal;ref\n" + rows_as("{m};{sm:.0f};{rm:.0f}")).encode()),
    Strange("formula cells", ('time;signal;ref\n' + rows_as('="{t:.3f}";="{s}";="{r}"')).encode()),
    Strange("tabs and blanks", (" time \t signal \t ref \n" + rows_as(" {t:.3f} \t {s}\t{r} ")).encode()),
    Strange("empty columns", ("time,signal,ref,,,,,,\n" + _rows(lambda n,t,s,r: f"{t:.3f},{s},{r}" + ","*(n%7) + "\n")).encode()),
    Strange("other table below", ("time;signal;ref\n" + _TABLE + "\nPeak;Time\n4.5;0.006\n0.5;0.000\n").encode(), says="runs backwards at row 14"),
    Strange("side by side shorter", ("time;signal;ref;;no;peak\n" + _rows(lambda n,t,s,r: f"{t:.3f};{s};{r};" + (f";{n+1};{s+.1:.2f}" if n<4 else ";;") + "\n")).encode()),
    Strange("wire colours", ("s;yellow;green;black\n" + _rows(lambda n,t,s,r: f"{t:.3f};{r};{s};0.012\n")).encode(), others={Role.GROUND: (0.012, 0.012, 0.012, 0.012, 0.012, 0.012, 0.012, 0.012, 0.012, 0.012, 0.012, 0.012)}),
    Strange("cyrillic 1251", ("Время;Сигнал;Опора\nс;В;В\n" + comma(_TABLE)).encode("cp1251")),
    Strange("japanese", ("時間;信号;基準\n" + _TABLE).encode("shift-jis")),
    Strange("polish 1250", ("Czas [ms];Napięcie [mV];Zasilanie [mV]\n" + rows_as("{m};{sm:.0f};{rm:.0f}")).encode("cp1250")),
    Strange("rows twice", ("time;signal;ref\n" + _rows(lambda n,t,s,r: f"{t:.3f};{s};{r}\n"*2)).encode(), says="every row stands in it twice"),
    Strange("whole ms unitless", ("time;signal;ref\n" + rows_as("{m};{s};{r}")).encode(), says="--unit COLUMN=UNIT", wishes=Wishes(units={"time": "ms"})),
    Strange("one wire after the other", ("signal\n0.001\n" + "\n".join(map(str, SIGNAL_V)) + "\nref\n0.001\n" + "\n".join(map(str, REFERENCE_V)) + "\n").encode(), says="--sample-interval SECONDS"),
    Strange("units once more between", ("time;signal;ref\n(s);(V);(V)\n\n" + _TABLE.replace(".", ",")).encode()),
    Strange("indian thousands", ("t [us];sig [uV];ref [uV]\n" + _rows(lambda n,t,s,r: f"{100000+n*1000:,};{s*1e6:.0f};{r*1e6:.0f}\n".replace("1", "1"))).encode()),
    Strange("blanks as thousands blanks as decimal", ("Zeit [ms];Signal [mV];Ref [mV]\n" + _rows(lambda n,t,s,r: f"{n};{s*1000:,.0f};{r*1000:,.0f}\n".replace(",", " "))).encode()),
    Strange("boolean column", ("time;ok;signal;ref\n" + _rows(lambda n,t,s,r: f"{t:.3f};TRUE;{s};{r}\n")).encode()),
    Strange("semicolon remark at every line", ("time,signal,ref\n" + rows_as("{t:.3f},{s},{r} ; ok")).encode(), reference=None),
    Strange("ctrl z and nulls in middle", ("time;signal;ref\n" + "\n".join(_LINES[:6])).encode() + b"\n\0\0\0\0\0\0\0\0\0\n" + ("\n".join(_LINES[6:]) + "\n").encode(), says="neither text"),
    Strange("seconds wrap at 60", ("s;signal;ref\n" + _rows(lambda n,t,s,r: f"{(59.995+t)%60:.3f};{s};{r}\n")).encode()),
    Strange("min:sec wrap at the hour", ("t;signal;ref\n" + _rows(lambda n,t,s,r: f"{'59' if n<5 else '00'}:{(59.995+t)%60:06.3f};{s};{r}\n")).encode()),
    Strange("12 hour over noon", ("t;signal;ref\n" + _rows(lambda n,t,s,r: f"{'11:59:59' if n<5 else '12:00:00'}.{(995+n)%1000:03d} {'AM' if n<5 else 'PM'};{s};{r}\n")).encode()),
    Strange("12 hour over one", ("t;signal;ref\n" + _rows(lambda n,t,s,r: f"{'12:59:59' if n<5 else '1:00:00'}.{(995+n)%1000:03d};{s};{r}\n")).encode(), says="runs backwards at row 6", wishes=Wishes(interval_s=1e-3)),
    Strange("comma ms after clock", ("Zeit,Signal,Ref\n" + _rows(lambda n,t,s,r: f'"09:14:07,{500+n}","{comma(str(s))}","{comma(str(r))}"\n')).encode()),
    Strange("clock comma ms unquoted comma file", ("Zeit,Signal,Ref\n" + _rows(lambda n,t,s,r: f'09:14:07,{500+n},{s},{r}\n')).encode(), says="inside times"),
    Strange("float noise", ("time;signal;ref\n" + _rows(lambda n,t,s,r: f"{0.1*n*0.01+1e-7*((n*7)%5):.9f};{s};{r}\n")).encode()),
)  # fmt: skip
