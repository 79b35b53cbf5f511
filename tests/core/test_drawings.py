"""The line drawings: one for every exercise, whole, inside the frame, readable by a screen reader."""

import math
from xml.etree import ElementTree

import pytest
from hypothesis import given
from hypothesis import strategies as st

from reminders.core.drawing_scenes import SCENES
from reminders.core.drawings import FLOOR, HEIGHT, LOWER, PANEL, UPPER, WIDTH, bend, drawing, front_body, side_body
from reminders.core.library import LIBRARY, exercise

SVG = "{http://www.w3.org/2000/svg}"
codes = pytest.mark.parametrize("code", LIBRARY)


def panels(code: str) -> list[ElementTree.Element]:
    return ElementTree.fromstring(drawing(code)).findall(f"{SVG}g")


def bodies(code: str) -> list:
    scene = SCENES[code]
    make = front_body if scene.front else side_body
    return [make(scene.start), make(scene.end)]


def test_every_exercise_has_a_drawing_and_every_drawing_an_exercise() -> None:
    assert set(SCENES) == set(LIBRARY)


@codes
def test_a_drawing_is_an_image_with_a_title_and_two_positions(code: str) -> None:
    svg = ElementTree.fromstring(drawing(code, "Sit to stand: start and end"))

    assert svg.attrib["role"] == "img"
    assert svg.attrib["viewBox"] == f"0 0 {WIDTH} {HEIGHT}"
    assert svg.findtext(f"{SVG}title") == "Sit to stand: start and end"
    assert [group.findtext(f"{SVG}text") for group in svg.findall(f"{SVG}g")] == ["1", "2"]


def test_a_title_is_escaped_and_falls_back_to_the_code() -> None:
    assert ElementTree.fromstring(drawing("heel-raise", 'Ana & "Ben" <b>')).findtext(f"{SVG}title") == 'Ana & "Ben" <b>'
    assert ElementTree.fromstring(drawing("heel-raise")).findtext(f"{SVG}title") == "heel raise"


@codes
def test_start_and_end_are_told_apart(code: str) -> None:
    start, end = ([ElementTree.tostring(one) for one in panel if one.tag != f"{SVG}text"] for panel in panels(code))

    assert start != end


@codes
def test_arrows_stay_inside_the_panel(code: str) -> None:
    for x1, y1, x2, y2 in SCENES[code].arrows:
        assert all(8 <= x <= PANEL - 8 for x in (x1, x2))
        assert all(8 <= y <= FLOOR - 2 for y in (y1, y2))
        assert math.dist((x1, y1), (x2, y2)) >= 16, "long enough to be seen"


@codes
def test_a_drawing_brings_no_style_script_colour_or_link(code: str) -> None:
    for one in ElementTree.fromstring(drawing(code)).iter():
        assert one.tag.removeprefix(SVG) in {"svg", "title", "g", "path", "rect", "circle", "text"}
        assert not {name for name in one.attrib if name.startswith("on") or name in ("style", "class", "href", "id")}
        assert {one.attrib.get("fill", "none"), one.attrib.get("stroke", "none")} <= {"none", "currentColor"}


@codes
def test_a_figure_stays_inside_its_panel_and_above_the_floor(code: str) -> None:
    for body in bodies(code):
        joints = [point for limb in (*body.arms, *body.legs, *body.feet) for point in limb]
        for x, y in (*joints, *body.trunk, body.head):
            assert 0 <= x <= PANEL, code
            assert 0 <= y <= FLOOR, code
        assert body.head[1] >= 12, "the head has room"


@codes
def test_somebody_stands_sits_or_lies_on_something(code: str) -> None:
    for body in bodies(code):
        lowest = max(y for limb in (*body.legs, *body.feet) for _, y in limb)
        on_step = exercise(code).equipment[:1] == ("step",)
        assert FLOOR - (24 if on_step else 8) <= lowest <= FLOOR


@codes
def test_bones_keep_their_length_in_a_side_view(code: str) -> None:
    scene = SCENES[code]
    if scene.front:
        return
    for pose, body in zip((scene.start, scene.end), bodies(code), strict=True):
        for limb, joint in zip(body.arms, pose.elbows, strict=True):
            if joint is None:
                assert math.dist(limb[0], limb[1]) == pytest.approx(UPPER, abs=0.1)
                assert math.dist(limb[1], limb[2]) == pytest.approx(LOWER, abs=0.1)


@codes
def test_hands_reach_the_counter_where_the_figure_holds_it(code: str) -> None:
    tops = [where[0] for name, where in SCENES[code].furniture if name == "counter"]
    for x in tops:
        for body in bodies(code):
            nearest = min(math.dist(limb[2], (x, 112)) for limb in body.arms)
            assert nearest <= 12, code


POINTS = st.tuples(st.floats(-200, 200), st.floats(-200, 200))


@given(POINTS, POINTS, st.sampled_from((-1.0, 1.0)))
def test_a_limb_never_stretches_and_reaches_what_is_near(
    start: tuple[float, float], end: tuple[float, float], side: float
) -> None:
    joint, hand = bend(start, end, 40, 40, side)

    assert math.dist(start, joint) == pytest.approx(40, abs=0.01)
    assert math.dist(joint, hand) == pytest.approx(40, abs=0.01)
    if 1 < math.dist(start, end) <= 80:
        assert math.dist(hand, end) == pytest.approx(0, abs=0.01)


def test_an_unknown_code_has_no_drawing() -> None:
    with pytest.raises(KeyError):
        drawing("sit-up")
