"""Which precaution forbids or changes which exercise, and why: one table a precaution.

Only the rows belong here; library.py gives each exercise its own, and programs.py applies them. Where no
source stands beside a table, it is common practice, no source; the therapist decides for her client.
"""

from dataclasses import dataclass

# What a precaution does to an exercise.
REFUSED = "refused"  # never, and nothing stands in for it
SWAPPED = "swapped"  # another exercise instead
HELD = "held"  # kept, with both hands on the counter
NOTED = "noted"  # kept, with a word to the therapist that says what to mind

NONE_KNOWN = "none known"
LOW_BONE, SPINE, JOINT, WEIGHT_BEARING = (
    "low bone density",
    "spinal fracture",
    "joint replacement with limits",
    "weight-bearing limit",
)
WRIST, NOT_FLAT, NO_FLOOR, VERTIGO = (
    "wrist fracture",
    "cannot lie flat",
    "cannot get to the floor",
    "vertigo",
)
HEART, PELVIC, ALONE, AID, SIGHT = (
    "heart or blood-pressure limit",
    "pelvic floor",
    "lives alone",
    "walking aid",
    "poor sight",
)
# The console's English names, as an enrolment file writes them.
PRECAUTIONS = (
    *(LOW_BONE, SPINE, JOINT, WEIGHT_BEARING, WRIST, NOT_FLAT, NO_FLOOR, VERTIGO),
    *(HEART, PELVIC, ALONE, AID, SIGHT),
)


@dataclass(frozen=True)
class Limit:
    """What one precaution does to one exercise; `reason` is a code with words in templates/exercises."""

    precaution: str
    effect: str
    reason: str
    swap: str | None = None


def _swaps(reason: str, **swaps: str) -> dict[str, tuple[str, str, str | None]]:
    return {code.replace("_", "-"): (SWAPPED, reason, swap) for code, swap in swaps.items()}


def _same(effect: str, reason: str, *codes: str) -> dict[str, tuple[str, str, str | None]]:
    return dict.fromkeys(codes, (effect, reason, None))


_BY_PRECAUTION: dict[str, dict[str, tuple[str, str, str | None]]] = {
    # Strength and balance together are advised; what is spared is the fall (Giangregorio et al., "Too Fit To
    # Fracture: exercise recommendations", Osteoporos Int 2014).
    LOW_BONE: _same(HELD, "fall-breaks-bone", "one-leg-stand", "heel-to-toe-walk", "step-up"),
    # No weighted work away from the body, no end of range (Too Fit To Fracture / Osteoporosis Canada handout);
    # impact only up to brisk walking (Brooke-Wavell et al., BJSM 2022;56(15):837-846).
    SPINE: (
        _swaps(
            "load-on-spine",
            suitcase_carry="tall-walk",
            hug_carry="tall-walk",
            counter_push_up="wall-push-up",
            arm_curl="elbow-pull",
        )
        | _swaps(
            "end-of-back-range",
            face_down_lift="chair-back-press",
            hands_and_knees_reach="seated-march",
        )
        | _same(HELD, "fall-breaks-bone", "one-leg-stand", "heel-to-toe-walk", "step-up")
        | _same(NOTED, "straight-back", "hip-hinge", "sit-to-stand", "bridge")
    ),
    JOINT: (
        _swaps(
            "outside-joint-limits",
            side_lying_hip_abduction="seated-knee-press",
            hands_and_knees_reach="seated-belly-brace",
            standing_side_leg_lift="weight-shift",
        )
        | _same(NOTED, "inside-joint-limits", "hip-hinge", "seated-march", "mini-squat", "heel-slide")
        | _same(NOTED, "high-seat", "sit-to-stand")
        | _same(HELD, "steady-first", "step-up", "one-leg-stand")
    ),
    WEIGHT_BEARING: (
        _swaps(
            "weight-through-leg",
            sit_to_stand="seated-knee-straighten",
            mini_squat="seated-knee-straighten",
            step_up="seated-knee-straighten",
            hip_hinge="seat-squeeze",
            bridge="seat-squeeze",
            standing_hip_extension="seat-squeeze",
            wall_push_up="palm-press",
            counter_push_up="palm-press",
            armrest_push_up="palm-press",
            wall_arm_slide="seated-overhead-reach",
            shelf_reach="seated-overhead-reach",
        )
        | _swaps(
            "weight-through-leg",
            heel_raise="seated-heel-raise",
            toe_raise="seated-heel-raise",
            march_in_place="seated-march",
            standing_side_leg_lift="seated-knee-press",
            wall_stand="chair-back-press",
            wall_plank="seated-belly-brace",
            hands_and_knees_reach="seated-march",
        )
        | _same(REFUSED, "weight-through-leg", "suitcase-carry", "hug-carry", "tall-walk", "steady-walk")
        | _same(REFUSED, "weight-through-leg", "feet-together-stance", "tandem-stance", "one-leg-stand")
        | _same(REFUSED, "weight-through-leg", "weight-shift", "side-steps", "heel-to-toe-walk")
    ),
    WRIST: (
        _swaps(
            "weight-through-wrist",
            band_row="elbow-pull",
            towel_pull="elbow-pull",
            arm_curl="elbow-pull",
            suitcase_carry="tall-walk",
            hug_carry="tall-walk",
            hands_and_knees_reach="seated-march",
            wall_plank="seated-belly-brace",
            seated_knee_press="seated-march",
        )
        | _same(REFUSED, "weight-through-wrist", "wall-push-up", "counter-push-up", "armrest-push-up")
        | _same(REFUSED, "weight-through-wrist", "palm-press", "band-chest-press")
    ),
    NOT_FLAT: _swaps(
        "lying-flat",
        bridge="seat-squeeze",
        lying_rest="chair-back-press",
        face_down_lift="chair-back-press",
        belly_brace="seated-belly-brace",
        heel_slide="seated-march",
        side_lying_hip_abduction="seated-knee-press",
    ),
    NO_FLOOR: _swaps(
        "down-to-floor",
        bridge="seat-squeeze",
        lying_rest="chair-back-press",
        face_down_lift="chair-back-press",
        belly_brace="seated-belly-brace",
        heel_slide="seated-march",
        hands_and_knees_reach="seated-march",
        side_lying_hip_abduction="seated-knee-press",
    ),
    VERTIGO: (
        _swaps(
            "head-moves",
            bridge="seat-squeeze",
            lying_rest="chair-back-press",
            face_down_lift="chair-back-press",
            hands_and_knees_reach="seated-march",
            side_lying_hip_abduction="seated-knee-press",
        )
        | _same(HELD, "steady-first", "one-leg-stand", "heel-to-toe-walk", "side-steps", "step-up")
        | _same(NOTED, "eyes-ahead", "seated-overhead-reach", "shelf-reach", "sit-to-stand", "chin-tuck")
    ),
    HEART: (
        _swaps(
            "hard-holds",
            towel_pull="elbow-pull",
            wall_plank="seated-belly-brace",
            suitcase_carry="tall-walk",
            hug_carry="tall-walk",
            armrest_push_up="wall-push-up",
        )
        | _same(NOTED, "breathe-and-rest", "palm-press", "arm-curl", "seated-overhead-reach", "step-up")
        | _same(NOTED, "breathe-and-rest", "steady-walk", "lying-rest", "belly-brace", "seated-belly-brace")
    ),
    PELVIC: (
        _swaps(
            "pressure-downwards",
            suitcase_carry="tall-walk",
            hug_carry="tall-walk",
            wall_plank="seated-belly-brace",
        )
        | _same(NOTED, "breathe-out", "sit-to-stand", "bridge", "belly-brace")
        | _same(NOTED, "breathe-out", "seated-belly-brace", "hands-and-knees-reach")
    ),
    ALONE: (
        _same(HELD, "nobody-near", "one-leg-stand", "heel-to-toe-walk", "step-up")
        | _same(NOTED, "on-the-bed", "bridge", "lying-rest", "face-down-lift", "belly-brace", "heel-slide")
        | _same(NOTED, "on-the-bed", "side-lying-hip-abduction", "hands-and-knees-reach")
    ),
    AID: (
        _swaps(
            "needs-aid",
            heel_to_toe_walk="tandem-stance",
            one_leg_stand="tandem-stance",
            suitcase_carry="tall-walk",
            hug_carry="tall-walk",
        )
        | _same(HELD, "steady-first", "side-steps", "step-up", "tandem-stance", "march-in-place")
        | _same(HELD, "steady-first", "standing-side-leg-lift", "standing-hip-extension")
        | _same(NOTED, "with-aid", "tall-walk", "steady-walk")
    ),
    SIGHT: (
        _swaps("sees-step-badly", step_up="mini-squat")
        | _same(HELD, "steady-first", "heel-to-toe-walk", "side-steps", "one-leg-stand")
        | _same(NOTED, "clear-path", "suitcase-carry", "hug-carry", "tall-walk", "steady-walk")
    ),
}

LIMITS = tuple(
    (code, Limit(precaution, effect, reason, swap))
    for precaution, rows in _BY_PRECAUTION.items()
    for code, (effect, reason, swap) in rows.items()
)
