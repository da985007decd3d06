"""The second door: a stretch of travel that the technician names, judged as the bands that were found."""

from __future__ import annotations

from dataclasses import replace

import numpy as np

from analysis.captures.model import Role
from analysis.diagnosis.bands import in_volts, make_band, reconciled
from analysis.diagnosis.confidence import calibration
from analysis.diagnosis.findings import Band, BandBasis, Findings
from analysis.diagnosis.place_signs import FOOTHOLD
from analysis.diagnosis.places import place_at, same_stretch
from analysis.intervals import Interval
from analysis.signals.roughness import BIN_PERCENT

_HALF_BIN_PERCENT = 0.5 * BIN_PERCENT
_UNKNOWN = BandBasis(0.0, 0.0, 0.0, 0.0, feed_v=0.0)


def assess(findings: Findings, track: Role, travel: Interval) -> Band | None:
    """Judge a stretch of travel by the evidence that the bands of a capture are judged by.

    Parameters
    ----------
    findings : Findings
        Of the capture.
    track : Role
        The track that the stretch lies on.
    travel : Interval
        In % of travel; it may overlap a found band, or lie where nothing was found.

    Returns
    -------
    Band or None
        With the edges as they were given, counted in bins of travel. Its confidence is the probability that
        the output breaks up there place-locked; where it shares at least half of the joint travel with a
        found band, that of the same spot with these edges. NaN, not rated, where no crossing visited it, or
        where the findings came without what they were judged by (the volts are nought then). None where the
        track was not surveyed.
    """
    survey = next((item for item in findings.surveys if item.role is track), None)
    if survey is None:
        return None
    basis = findings.basis or _UNKNOWN
    edges = Interval(float(survey.edges_percent[0]), float(survey.edges_percent[-1]))
    if edges.overlap(travel) < FOOTHOLD * travel.length or not edges.contains(travel.centre):
        return _not_visited(track, travel, basis)
    counted = survey.dwell_s.shape == survey.breakup_percent.shape
    if not counted:
        survey = replace(survey, dwell_s=np.ones_like(survey.breakup_percent))
    spots = [(item.travel, item.log_odds) for item in basis.spots if item.track is track]
    band = make_band(survey, place_at(survey, travel, spots), basis, calibration())
    surest = max(findings.bands, key=lambda item: item.confidence, default=None)
    if surest is not None and surest.track is track and same_stretch(surest.travel, travel):
        (band,) = reconciled((band,), basis.worn)
    rated = counted and findings.basis is not None and band.passes > 0
    return replace(
        band,
        travel=travel,
        volts=in_volts(travel, basis),
        start_uncertainty_percent=_HALF_BIN_PERCENT,
        stop_uncertainty_percent=_HALF_BIN_PERCENT,
        confidence=band.confidence if rated else float("nan"),
    )


def _not_visited(track: Role, travel: Interval, basis: BandBasis) -> Band:
    nan = float("nan")
    volts = in_volts(travel, basis)
    return Band(travel, volts, _HALF_BIN_PERCENT, _HALF_BIN_PERCENT, nan, 0, 0, nan, "both", "", (), track)
