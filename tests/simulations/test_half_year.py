"""The simulated half year: the defaults ask for about 15 alerts a week, and fixed levels for several times as many."""

from reminders.core.levels import DEFAULTS, FIXED
from tests.simulations.half_year import CLIENTS, run


def test_the_defaults_raise_about_fifteen_alerts_a_week_for_sixty_clients_and_catch_the_flares() -> None:
    outcome = run(DEFAULTS)
    assert 8 <= outcome.per_week <= 18
    assert outcome.caught / outcome.flares >= 0.9
    assert outcome.progressed / CLIENTS >= 0.5


def test_fixed_levels_raise_far_more_and_mostly_outside_any_flare() -> None:
    fixed, ours = run(FIXED), run(DEFAULTS)
    assert fixed.per_week > 3 * ours.per_week
    pains = [alarm for alarm in fixed.alarms if alarm.rule == "pain_up"]
    assert sum(not alarm.in_flare for alarm in pains) / len(pains) > 0.75
    assert ours.caught >= fixed.caught - 2


def test_the_same_seed_lives_the_same_half_year() -> None:
    assert run(DEFAULTS, seed=3).alarms == run(DEFAULTS, seed=3).alarms
