"""Lines of numbers that sum up a table, above its samples or below them: means, extremes, ranges, limits."""

from __future__ import annotations

import re
from collections.abc import Collection, Sequence

from analysis.importing.cells import MISSING
from analysis.importing.units import without_accents

_SUMMARY = re.compile(  # without accents, in small letters; in the languages of the workshops around
    r"^\W*(?:(?:the|all|total|column|channel|signal|sample|arith\w*\.?|arithmetic|quadratic)\s)?"
    r"(?:mean|average|avg|minim(?:um|a|o)|min|maxim(?:um|a|o)|max|median|std|stdev|stddev|st\.? ?dev|sd|sigma"
    r"|standard ?(?:deviation|abweichung)|variance|varianz|rms|eff|sum|total|count|range|span|spread|peak"
    r"|p-?p|pk-?pk|peak ?to ?peak|limits?|(?:lower|upper|low|high) ?limit|mittel|mittelwert|mw|durchschnitt"
    r"|kleinstwert|groesstwert|großtwert|standardabw|stabw|summe|gesamt|anzahl|bereich|messbereich|spannweite"
    r"|grenzwerte?|untergrenze|obergrenze|moyenne|ecart.type|somme|etendue|media|promedio|moda|suma|rango|scarto"
    r"|somma|gemiddelde|som|srednia|odchylenie|prumer|soucet|atlag|osszeg|ortalama|среднее|мин|макс|сумма)"
    r"\.?(?:\s?(?:values?|wert|deviation|dev\.?|abweichung))?\s*(?:[\[(][^\])]*[\])])?\W*$"
)


def is_summary(cells: Sequence[str], words: Collection[int] = ()) -> bool:
    """Whether the first cell of a line that holds anything says that the others sum up samples.

    Parameters
    ----------
    cells : sequence of str
        Of the line.
    words : collection of int
        Cells in which samples have words too: these say nothing of a line.
    """
    place = next((place for place, cell in enumerate(cells) if cell.strip(' "')), None)
    if place is None or place in words:
        return False
    first = cells[place].strip(' "')
    return first[:1].isalpha() and len(first) < 40 and _SUMMARY.match(without_accents(first)) is not None


def margin_of(rows: Sequence[Sequence[str]], numeric: Sequence[bool]) -> tuple[int, ...]:
    """Cells before the first number of a row in which samples have nothing: a word there names the line.

    Parameters
    ----------
    rows : sequence of sequence of str
        Cells of some rows of samples, perhaps with some other lines.
    numeric : sequence of bool
        Which cells hold numbers.
    """
    before = numeric.index(True) if True in numeric else 0
    whole = [row for row in rows if len(row) == len(numeric)]
    filled = [sum(row[place].lower() not in MISSING for row in whole) for place in range(before)]
    return tuple(place for place, count in enumerate(filled) if 10 * count <= len(whole))


def words_of(numeric: Sequence[bool], margin: Collection[int]) -> frozenset[int]:
    """Cells in which samples have words: all that are no numbers and not in the margin."""
    return frozenset(place for place, use in enumerate(numeric) if not use and place not in margin)
