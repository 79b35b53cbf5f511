"""Line drawings of the exercises, start and end position side by side, as SVG texts of our own making.

How a stick figure and the furniture are drawn belongs here; the poses stand in drawing_poses.py. Lines take the
colour of the text around them, and nothing depends on colour.
"""

import math
from collections.abc import Callable
from dataclasses import dataclass
from xml.sax.saxutils import escape

from reminders.core.drawing_poses import Pose, Scene
from reminders.core.drawing_scenes import SCENES

Point = tuple[float, float]

PANEL, GAP, HEIGHT, FLOOR = 190, 14, 216, 200
WIDTH = 2 * PANEL + GAP
TORSO, NECK, HEAD, UPPER, LOWER, THIGH, SHANK = 52, 20, 11, 27, 26, 40, 40
SHOULDER_HALF, HIP_HALF = 14, 8


@dataclass(frozen=True)
class Body:
    """The points of one figure, ready to be joined by lines; `left` is the far side in a side view."""

    head: Point
    nose: Point | None
    trunk: tuple[Point, ...]
    arms: tuple[tuple[Point, Point, Point], tuple[Point, Point, Point]]
    legs: tuple[tuple[Point, Point, Point], tuple[Point, Point, Point]]
    feet: tuple[tuple[Point, ...], tuple[Point, ...]]


def drawing(code: str, title: str = "") -> str:
    """Return the SVG of an exercise with its start (1) and end (2); the title is what a screen reader says.

    Raises KeyError for a code without a drawing.
    """
    scene = SCENES[code]
    panels = _panel(scene, scene.start, 1, 0) + _panel(scene, scene.end, 2, PANEL + GAP)
    label = escape(title or code.replace("-", " "))
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDTH} {HEIGHT}" role="img" fill="none" '
        'stroke="currentColor" stroke-width="5" stroke-linecap="round" stroke-linejoin="round">'
        f"<title>{label}</title>{panels}</svg>"
    )


def _panel(scene: Scene, pose: Pose, number: int, left: int) -> str:
    """Return one position: the furniture behind, the figure, what she holds, and on the end position the arrows."""
    parts = [
        f'<path d="M4 {FLOOR}H{PANEL - 4}" stroke-width="2"/>',
        f'<text x="6" y="20" font-size="18" font-family="sans-serif" stroke="none" fill="currentColor">{number}</text>',
    ]
    parts += [FURNITURE[name](*where) for name, where in scene.furniture]
    body = front_body(pose) if scene.front else side_body(pose)
    parts.append(_figure(body, scene.front))
    parts += [_held(name, where, body) for name, where in scene.held]
    parts += [_lines(line) for line in pose.marks]
    if number == 2:
        parts += [_arrow(*arrow) for arrow in scene.arrows]
    return f'<g transform="translate({left} 0)">{"".join(parts)}</g>'


def _toward(start: Point, angle: float, length: float) -> Point:
    """Return the point at a distance; angle 0 is up, 90 to the right."""
    turn = math.radians(angle)
    return start[0] + length * math.sin(turn), start[1] - length * math.cos(turn)


def bend(start: Point, end: Point, first: float, second: float, side: float) -> tuple[Point, Point]:
    """Return the joint and the end of a limb of two bones that reaches for a point.

    `side` +1 bends to the right of the line from start to end as one walks along it, -1 to the left. What is too
    far away is reached for with a straight limb.
    """
    across, down = end[0] - start[0], end[1] - start[1]
    gap = math.hypot(across, down)
    unit = (across / gap, down / gap) if gap else (0.0, 1.0)
    reach = max(min(gap, first + second), abs(first - second), 1e-6)
    along = (first**2 - second**2 + reach**2) / (2 * reach)
    off = math.sqrt(max(first**2 - along**2, 0)) * side
    joint = start[0] + unit[0] * along - unit[1] * off, start[1] + unit[1] * along + unit[0] * off
    return joint, (start[0] + unit[0] * reach, start[1] + unit[1] * reach)


def _limb(start: Point, end: Point, lengths: Point, side: float, joint: Point | None) -> tuple[Point, Point, Point]:
    if joint is not None:
        return start, joint, end
    return (start, *bend(start, end, *lengths, side))


def _foot(ankle: Point, angle: float, mirror: int) -> tuple[Point, ...]:
    """Return heel and toe of a foot; angle 0 is flat, positive lifts the toe."""
    turn = math.radians(-angle)

    def at(x: float, y: float) -> Point:
        across, down = x * math.cos(turn) - y * math.sin(turn), x * math.sin(turn) + y * math.cos(turn)
        return ankle[0] + mirror * across, ankle[1] + down

    return ankle, at(-3, 5), at(13, 5)


def side_body(pose: Pose) -> Body:
    """Return the figure seen from the side, facing right (left where the pose is flipped)."""
    shoulder = _toward(pose.hip, pose.lean, TORSO)
    tilt = pose.lean if pose.head is None else pose.head
    head = _toward((shoulder[0] + pose.chin, shoulder[1]), tilt, NECK)
    nose = _toward(head, tilt + 90 * pose.facing, HEAD + 5) if pose.has_nose else None
    arms = [
        _limb(shoulder, hand, (UPPER, LOWER), pose.facing * pose.elbow, joint)
        for hand, joint in zip(pose.hands, pose.elbows, strict=True)
    ]
    legs = [
        _limb(pose.hip, ankle, (THIGH, SHANK), -pose.facing, joint)
        for ankle, joint in zip(pose.ankles, pose.knees, strict=True)
    ]
    feet = [_foot(leg[2], angle, pose.facing) for leg, angle in zip(legs, pose.feet, strict=True)]
    return Body(head, nose, (pose.hip, shoulder), (arms[0], arms[1]), (legs[0], legs[1]), (feet[0], feet[1]))


def front_body(pose: Pose) -> Body:
    """Return the figure seen from the front or the back: the first hand and ankle are those at the left."""
    neck = _toward(pose.hip, pose.lean, TORSO)
    head = _toward(neck, pose.lean, NECK)
    arms, legs, feet = [], [], []
    for place, outward in ((0, -1), (1, 1)):
        shoulder = neck[0] + outward * SHOULDER_HALF, neck[1] + 2
        joint = pose.hip[0] + outward * HIP_HALF, pose.hip[1]
        arms.append(_limb(shoulder, pose.hands[place], (UPPER, LOWER), -outward, pose.elbows[place]))
        legs.append(_limb(joint, pose.ankles[place], (THIGH, SHANK), -outward, pose.knees[place]))
        ankle = legs[-1][2]
        feet.append((ankle, (ankle[0] + outward * 7, ankle[1] + 6)))
    trunk = (arms[0][0], arms[1][0], legs[1][0], legs[0][0], arms[0][0])
    return Body(head, None, trunk, (arms[0], arms[1]), (legs[0], legs[1]), (feet[0], feet[1]))


def _figure(body: Body, front: bool) -> str:
    """Return the figure's lines; in a side view the far limbs are paler and lie behind."""
    far = ' stroke-opacity="0.4"' if not front else ""
    parts = [_lines(body.arms[0], far), _lines(body.legs[0], far), _lines(body.feet[0], far)]
    parts += [_lines(body.trunk), _lines(body.legs[1]), _lines(body.feet[1])]
    neck = _middle(body.trunk[0], body.trunk[1]) if front else body.trunk[1]
    parts.append(_lines((neck, body.head, *((body.nose,) if body.nose else ()))))
    parts.append(f'<circle cx="{_n(body.head[0])}" cy="{_n(body.head[1])}" r="{HEAD}" fill="currentColor"/>')
    parts.append(_lines(body.arms[1]))
    return "".join(parts)


def _middle(first: Point, second: Point) -> Point:
    return (first[0] + second[0]) / 2, (first[1] + second[1]) / 2


def _n(value: float) -> str:
    return f"{value:.1f}".removesuffix(".0")


def _lines(points: tuple[Point, ...], more: str = "") -> str:
    path = "L".join(f"{_n(x)} {_n(y)}" for x, y in points)
    return f'<path d="M{path}"{more}/>'


def _arrow(x1: float, y1: float, x2: float, y2: float) -> str:
    """Return an arrow from the first to the second point."""
    angle = math.degrees(math.atan2(x2 - x1, y1 - y2))
    barbs = (_toward((x2, y2), angle + 145, 9), (x2, y2), _toward((x2, y2), angle - 145, 9))
    return _lines(((x1, y1), (x2, y2)), ' stroke-width="3"') + _lines(barbs, ' stroke-width="3"')


def _box(x: float, y: float, width: float, height: float, more: str = "") -> str:
    return f'<rect x="{_n(x)}" y="{_n(y)}" width="{_n(width)}" height="{_n(height)}" rx="3" stroke-width="3"{more}/>'


def _thin(path: str) -> str:
    return f'<path d="{path}" stroke-width="3" stroke-opacity="0.7"/>'


def _chair(x: float, back: float = 98) -> str:
    return _thin(f"M{x - 26} {back}L{x - 22} 157H{x + 20}M{x - 22} 157V{FLOOR}M{x + 17} 157V{FLOOR}")


def _armchair(x: float) -> str:
    return _chair(x) + _thin(f"M{x - 23} 130H{x + 16}V157")


def _chair_front(x: float) -> str:
    return _thin(f"M{x - 28} {FLOOR}V100H{x + 28}V{FLOOR}M{x - 28} 157H{x + 28}")


def _wall(x: float) -> str:
    hatch = "".join(f"M{x} {y}l9 9" for y in range(12, FLOOR - 8, 16))
    return _thin(f"M{x} 6V{FLOOR}{hatch}")


def _wall_behind(x: float) -> str:
    hatch = "".join(f"M{x} {y}l-9 9" for y in range(12, FLOOR - 8, 16))
    return _thin(f"M{x} 6V{FLOOR}{hatch}")


def _counter(x: float, width: float = 46) -> str:
    return _thin(f"M{x - 5} 112H{x + width}M{x} 112V{FLOOR}M{x + width - 4} 112V{FLOOR}")


def _counter_along(x: float, width: float) -> str:
    return _thin(f"M{x} 112H{x + width}M{x + 4} 112V{FLOOR}M{x + width - 4} 112V{FLOOR}")


def _step(x: float) -> str:
    return _thin(f"M{x} {FLOOR}V178H{x + 62}V{FLOOR}")


def _rail(x: float) -> str:
    return _thin(f"M{x - 26} 96H{x + 8}M{x} 96V178")


def _shelf(x: float) -> str:
    return _thin(f"M{x} 36H{x + 44}M{x + 44} 20V52")


def _cushion(x: float, y: float, width: float = 30, height: float = 9) -> str:
    return _box(x, y, width, height, ' stroke-opacity="0.7"')


def _post(x: float) -> str:
    return _thin(f"M{x} 60V{FLOOR}M{x - 5} 112H{x}")


def _thread(x: float, y: float) -> str:
    return f'<path d="M{x} {y}V2" stroke-width="2" stroke-dasharray="4 6"/>'


FURNITURE: dict[str, Callable[..., str]] = {
    "chair": _chair,
    "armchair": _armchair,
    "chair front": _chair_front,
    "wall": _wall,
    "wall behind": _wall_behind,
    "counter": _counter,
    "counter along": _counter_along,
    "step": _step,
    "rail": _rail,
    "shelf": _shelf,
    "cushion": _cushion,
    "post": _post,
    "thread": _thread,
}


def _held(name: str, where: tuple[float, ...], body: Body) -> str:
    """Return what the hands hold: weights, a bag, a bundle at the chest, a towel, or a band to a point."""
    first, second = body.arms[0][2], body.arms[1][2]
    if name == "weight":
        return _box(second[0] - 9, second[1] - 4, 18, 9, ' fill="currentColor"')
    if name == "bag":
        x, y = second
        return _box(x - 12, y + 8, 24, 20, ' fill="currentColor" fill-opacity="0.3"') + _lines(
            ((x - 6, y + 8), second, (x + 6, y + 8)), ' stroke-width="3"'
        )
    if name == "bundle":
        return _box(second[0] - 16, second[1] - 17, 22, 24)
    if name == "towel":
        out = ((first[0] - 8, first[1]), (second[0] + 8, second[1]))
        return _lines(out, ' stroke-width="9" stroke-opacity="0.6"')
    return _lines(((where[0], where[1]), second), ' stroke-width="3" stroke-dasharray="7 5"')
