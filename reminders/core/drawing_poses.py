"""What a pose and a scene of a drawing are, and the poses that many exercises begin with.

Points are in one panel, 190 wide, the floor at y 200, y downwards. A figure seen from the side faces right; of each
pair the far limb comes first, the near one second. Seen from the front the left one of the picture comes first.
"""

import math
from dataclasses import dataclass, replace

Point = tuple[float, float]
Pair = tuple[Point, Point]
Thing = tuple[str, tuple[float, ...]]


@dataclass(frozen=True)
class Pose:
    """Where hip, hands and ankles are; elbows and knees bend by themselves unless they are given.

    `lean`: the trunk's angle, 0 upright, 90 lying towards the right; `head` the same for the head, None as the
    trunk. `facing` -1 turns the face and knees to the other side. `elbow` -1 bends elbows to the front. `chin`
    shifts the head. `has_nose` is False where the face looks at us. `marks` are extra lines.
    """

    hip: Point
    hands: Pair
    ankles: Pair
    lean: float = 0
    head: float | None = None
    feet: tuple[float, float] = (0, 0)
    elbows: tuple[Point | None, Point | None] = (None, None)
    knees: tuple[Point | None, Point | None] = (None, None)
    facing: int = 1
    elbow: int = 1
    chin: float = 0
    has_nose: bool = True
    marks: tuple[tuple[Point, ...], ...] = ()


@dataclass(frozen=True)
class Scene:
    """Start and end of one exercise, the furniture, what is held, and arrows shown on the end position."""

    start: Pose
    end: Pose
    furniture: tuple[Thing, ...] = ()
    held: tuple[Thing, ...] = ()
    arrows: tuple[tuple[float, float, float, float], ...] = ()
    front: bool = False


def at(name: str, *where: float) -> Thing:
    """Return a piece of furniture, or a thing held, with its place."""
    return name, where


def both(x: float, y: float) -> Pair:
    """Return the same point for the far and the near limb."""
    return (x, y), (x, y)


def standing(x: float, hands: Pair | None = None) -> Pose:
    """Return someone standing with the ankles at x, arms at the sides unless the hands are given."""
    return Pose((x, 113.4), hands or both(x + 6, 113), both(x, 193))


def sitting(hands: Pair | None = None) -> Pose:
    """Return someone sitting on a chair at x 70, hands on the lap unless they are given."""
    return Pose((64, 150), hands or both(94, 144), both(104, 193))


def leaning(ankle: float, angle: float, hands: Pair) -> Pose:
    """Return someone as straight as a board, leaning from the ankles."""
    turn = math.radians(angle)
    hip = ankle + 79 * math.sin(turn), 193 - 79 * math.cos(turn)
    return Pose(hip, hands, both(ankle, 193), lean=angle)


def striding(x: float, hands: Pair, swap: bool = False) -> Pose:
    """Return someone walking, one foot ahead; `swap` puts the other foot ahead."""
    back, ahead = (x - 24, 189), (x + 24, 191)
    ankles, feet = ((back, ahead), (-28.0, 12.0)) if not swap else ((ahead, back), (12.0, -28.0))
    return Pose((x, 118), hands, ankles, feet=feet)


def on_the_back(hands: Pair | None = None) -> Pose:
    """Return someone lying on the back, head at the left, knees bent and feet flat."""
    return Pose((92, 190), hands or both(90, 195), both(134, 193), lean=-90, head=-84, elbow=-1)


def seen_sitting(hands: Pair) -> Pose:
    """Return someone sitting, seen from the front, on a chair at x 95."""
    return Pose(
        (95, 150),
        hands,
        ((78, 193), (112, 193)),
        knees=((78, 162), (112, 162)),
    )


def seen_standing(x: float, hands: Pair, apart: float = 12) -> Pose:
    """Return someone standing, seen from the front or the back, each foot `apart` from the middle."""
    return Pose((x, 112.6), hands, ((x - apart, 192), (x + apart, 192)))


def at_counter(x: float) -> Pair:
    """Return both hands on a counter before someone who stands at x."""
    return both(x + 24, 108)


def moved(pose: Pose, dx: float = 0, dy: float = 0) -> Pose:
    """Return the pose with its hip shifted; hands and ankles stay."""
    return replace(pose, hip=(pose.hip[0] + dx, pose.hip[1] + dy))
