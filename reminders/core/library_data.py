"""The exercises themselves, as rows: what is done, where, with what, how it is counted, how easily it starts.

Only the rows belong here. Who may not do one stands in library_limits.py; names and cues stand in
templates/exercises. A code never changes and is never given to another exercise: records name it.

What is left out, for everybody: bending and twisting that is loaded, repeated or goes to the end of the
range, and lifting far from the body ("Too Fit To Fracture" 2014, Osteoporosis Canada handout). Technique
that spares the spine is taught instead of bans on moving (Giangregorio et al., Osteoporos Int 2015;26(3)),
and postures with high spinal flexion are avoided (Brooke-Wavell et al., "Strong, steady and straight: UK
consensus statement", BJSM 2022;56(15):837-846). Hence no sit-up, toe touch, trunk twist or loaded hinge.
"""

from dataclasses import dataclass

from reminders.core.dose import ALTERNATING, BOTH, EACH

PUSH, PULL, REACH, CARRY, SQUAT, HINGE = "push", "pull", "reach", "carry", "squat", "hinge"
BALANCE, POSTURE, FLOOR_CORE, WALKING = "balance", "posture", "floor core", "walking"
# The patterns a whole program trains; walking is an extra and is never named as missing.
PATTERNS = (PUSH, PULL, REACH, CARRY, SQUAT, HINGE, BALANCE, POSTURE, FLOOR_CORE)

SITTING, STANDING, ON_FOOT = "sitting", "standing", "walking"
ON_BACK, ON_FRONT, ON_SIDE, ON_ALL_FOURS = "on the back", "on the front", "on the side", "on hands and knees"
LYING = (ON_BACK, ON_FRONT, ON_SIDE)
FLOOR = (*LYING, ON_ALL_FOURS)
POSITIONS = (SITTING, STANDING, ON_FOOT, *FLOOR)

EQUIPMENT = ("chair", "armchair", "wall", "counter", "step", "shelf", "band", "weight", "towel", "cushion")


@dataclass(frozen=True)
class Row:
    """One exercise without its precautions; `start` is the easy dose it begins with, as a rung line.

    `loaded`: it needs a weight or a band to be itself. `one_leg`: she stands on one leg for part of it.
    `easy_version`: what an easy day does instead, for those two kinds. `chair_version`: what replaces it
    where the floor is out of reach; every exercise on the floor has one.
    """

    code: str
    pattern: str
    position: str
    equipment: tuple[str, ...]
    side: str
    start: str
    loaded: bool = False
    one_leg: bool = False
    easy_version: str | None = None
    chair_version: str | None = None


CHAIR, ARMCHAIR, WALL, COUNTER, NOTHING = ("chair",), ("armchair",), ("wall",), ("counter",), ()

ROWS = (
    # Squat
    Row("sit-to-stand", SQUAT, SITTING, CHAIR, BOTH, "1x10"),
    Row("mini-squat", SQUAT, STANDING, COUNTER, BOTH, "1x10"),
    Row("step-up", SQUAT, STANDING, ("step", "counter"), EACH, "1x8", one_leg=True, easy_version="mini-squat"),
    Row("seated-knee-straighten", SQUAT, SITTING, CHAIR, ALTERNATING, "1x10"),
    # Hinge
    Row("hip-hinge", HINGE, STANDING, CHAIR, BOTH, "1x10"),
    Row("bridge", HINGE, ON_BACK, NOTHING, BOTH, "1x10", chair_version="seat-squeeze"),
    Row("standing-hip-extension", HINGE, STANDING, COUNTER, EACH, "1x10", one_leg=True, easy_version="seat-squeeze"),
    Row("seat-squeeze", HINGE, SITTING, CHAIR, BOTH, "1x10"),
    # Push
    Row("wall-push-up", PUSH, STANDING, WALL, BOTH, "1x10"),
    Row("counter-push-up", PUSH, STANDING, COUNTER, BOTH, "1x8"),
    Row("armrest-push-up", PUSH, SITTING, ARMCHAIR, BOTH, "1x8"),
    Row("palm-press", PUSH, SITTING, CHAIR, BOTH, "2x10 sec"),
    Row("band-chest-press", PUSH, SITTING, ("chair", "band"), BOTH, "1x10", loaded=True, easy_version="palm-press"),
    # Pull
    Row("band-row", PULL, SITTING, ("chair", "band"), BOTH, "1x10", loaded=True, easy_version="elbow-pull"),
    Row("elbow-pull", PULL, SITTING, CHAIR, BOTH, "1x10"),
    Row("towel-pull", PULL, SITTING, ("chair", "towel"), BOTH, "2x10 sec"),
    Row("arm-curl", PULL, SITTING, ("chair", "weight"), BOTH, "1x10", loaded=True, easy_version="elbow-pull"),
    # Reach
    Row("seated-overhead-reach", REACH, SITTING, CHAIR, ALTERNATING, "1x10"),
    Row("wall-arm-slide", REACH, STANDING, WALL, BOTH, "1x10"),
    Row("shelf-reach", REACH, STANDING, ("shelf", "counter"), ALTERNATING, "1x10"),
    # Carry
    Row("suitcase-carry", CARRY, ON_FOOT, ("weight",), EACH, "1x20 sec", loaded=True, easy_version="tall-walk"),
    Row("hug-carry", CARRY, ON_FOOT, ("cushion", "weight"), BOTH, "2x20 sec", loaded=True, easy_version="tall-walk"),
    Row("tall-walk", CARRY, ON_FOOT, NOTHING, BOTH, "2x20 sec"),
    # Balance
    Row("feet-together-stance", BALANCE, STANDING, COUNTER, BOTH, "2x10 sec"),
    Row("tandem-stance", BALANCE, STANDING, COUNTER, EACH, "2x10 sec"),
    Row(
        "one-leg-stand", BALANCE, STANDING, COUNTER, EACH, "2x10 sec", one_leg=True, easy_version="feet-together-stance"
    ),
    Row("heel-raise", BALANCE, STANDING, COUNTER, BOTH, "1x10"),
    Row("toe-raise", BALANCE, STANDING, COUNTER, BOTH, "1x10"),
    Row("seated-heel-raise", BALANCE, SITTING, CHAIR, BOTH, "1x10"),
    Row("weight-shift", BALANCE, STANDING, COUNTER, ALTERNATING, "1x10"),
    Row("side-steps", BALANCE, ON_FOOT, COUNTER, EACH, "1x10"),
    Row("heel-to-toe-walk", BALANCE, ON_FOOT, COUNTER, BOTH, "1x10"),
    Row("march-in-place", BALANCE, STANDING, COUNTER, ALTERNATING, "1x10", one_leg=True, easy_version="weight-shift"),
    Row("standing-side-leg-lift", BALANCE, STANDING, COUNTER, EACH, "1x8", one_leg=True, easy_version="weight-shift"),
    # Posture
    Row("shoulder-blade-squeeze", POSTURE, SITTING, CHAIR, BOTH, "1x10"),
    Row("chin-tuck", POSTURE, SITTING, CHAIR, BOTH, "1x10"),
    Row("chair-back-press", POSTURE, SITTING, CHAIR, BOTH, "2x10 sec"),
    Row("wall-stand", POSTURE, STANDING, WALL, BOTH, "2x10 sec"),
    Row("lying-rest", POSTURE, ON_BACK, ("cushion",), BOTH, "1x5 min", chair_version="chair-back-press"),
    Row("face-down-lift", POSTURE, ON_FRONT, ("cushion",), BOTH, "1x5", chair_version="chair-back-press"),
    # Floor core, and the chair versions that train the same
    Row("belly-brace", FLOOR_CORE, ON_BACK, NOTHING, BOTH, "2x10 sec", chair_version="seated-belly-brace"),
    Row("heel-slide", FLOOR_CORE, ON_BACK, NOTHING, ALTERNATING, "1x10", chair_version="seated-march"),
    Row("hands-and-knees-reach", FLOOR_CORE, ON_ALL_FOURS, NOTHING, ALTERNATING, "1x6", chair_version="seated-march"),
    Row("side-lying-hip-abduction", FLOOR_CORE, ON_SIDE, NOTHING, EACH, "1x8", chair_version="seated-knee-press"),
    Row("seated-belly-brace", FLOOR_CORE, SITTING, CHAIR, BOTH, "2x10 sec"),
    Row("seated-march", FLOOR_CORE, SITTING, CHAIR, ALTERNATING, "1x10"),
    Row("seated-knee-press", FLOOR_CORE, SITTING, CHAIR, BOTH, "1x10"),
    Row("wall-plank", FLOOR_CORE, STANDING, WALL, BOTH, "2x10 sec"),
    # Walking
    Row("steady-walk", WALKING, ON_FOOT, NOTHING, BOTH, "1x10 min"),
)
