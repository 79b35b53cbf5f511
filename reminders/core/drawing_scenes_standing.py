"""The scenes of exercises done standing or walking, by code: poses, furniture and arrows as data."""

from dataclasses import replace

from reminders.core.drawing_poses import (
    Pose,
    Scene,
    at,
    at_counter,
    both,
    leaning,
    seen_standing,
    standing,
    striding,
)

COUNTER = (at("counter", 118),)
ALONG = (at("counter along", 10, 170),)
HELD_COUNTER = at_counter(92)
AT_COUNTER = standing(92, HELD_COUNTER)
BEHIND = ((54, 109), (126, 109))

STANDING_SCENES = {
    "mini-squat": Scene(
        AT_COUNTER,
        replace(AT_COUNTER, hip=(76, 130), lean=24),
        COUNTER,
        arrows=((40, 108, 40, 136),),
    ),
    "step-up": Scene(
        Pose((86, 116), ((124, 94), (112, 100)), ((80, 193), (112, 171))),
        Pose((116, 93), ((144, 94), (120, 94)), both(114, 171)),
        (at("step", 96), at("rail", 150)),
        arrows=((66, 160, 66, 122),),
    ),
    "hip-hinge": Scene(
        standing(100, both(137, 101)),
        replace(standing(100, both(137, 101)), hip=(68, 122), lean=52),
        (at("chair", 164),),
        arrows=((64, 98, 36, 102),),
    ),
    "standing-hip-extension": Scene(
        AT_COUNTER,
        replace(AT_COUNTER, ankles=((92, 193), (56, 182)), feet=(0, -24)),
        COUNTER,
        arrows=((62, 158, 36, 166),),
    ),
    "wall-push-up": Scene(
        leaning(82, 8, both(148, 72)),
        leaning(82, 22, both(148, 72)),
        (at("wall", 152),),
        arrows=((92, 84, 116, 78),),
    ),
    "counter-push-up": Scene(
        leaning(40, 25, both(128, 110)),
        leaning(40, 38, both(128, 110)),
        (at("counter", 130),),
        arrows=((62, 84, 84, 98),),
    ),
    "wall-arm-slide": Scene(
        standing(108, both(137, 92)),
        standing(108, both(137, 24)),
        (at("wall", 141),),
        arrows=((168, 80, 168, 34),),
    ),
    "shelf-reach": Scene(
        standing(100, ((124, 108), (104, 113))),
        standing(100, ((124, 108), (138, 34))),
        (at("counter", 126), at("shelf", 132)),
        arrows=((70, 64, 70, 30),),
    ),
    "suitcase-carry": Scene(
        standing(80, both(84, 114)),
        striding(96, ((110, 112), (98, 116))),
        held=(at("bag"),),
        arrows=((140, 120, 172, 120),),
    ),
    "hug-carry": Scene(
        standing(80, both(100, 86)),
        striding(96, both(116, 88)),
        held=(at("bundle"),),
        arrows=((140, 120, 172, 120),),
    ),
    "tall-walk": Scene(
        striding(80, ((96, 112), (64, 112)), swap=True),
        striding(96, ((82, 114), (112, 114))),
        (at("thread", 96, 30),),
        arrows=((140, 120, 172, 120),),
    ),
    "steady-walk": Scene(
        striding(70, ((54, 108), (94, 104))),
        striding(106, ((130, 104), (90, 108)), swap=True),
        arrows=((146, 130, 178, 130),),
    ),
    "feet-together-stance": Scene(
        seen_standing(88, ((70, 112), (126, 110)), 16),
        seen_standing(88, ((70, 112), (126, 110)), 5),
        (at("counter", 128),),
        arrows=((54, 180, 74, 188), (122, 180, 102, 188)),
        front=True,
    ),
    "tandem-stance": Scene(
        replace(standing(92, ((112, 110), (98, 113))), ankles=((88, 193), (96, 193))),
        replace(standing(96, ((116, 110), (102, 113))), ankles=((87, 193), (106, 193))),
        ALONG,
        arrows=((46, 176, 74, 176),),
    ),
    "one-leg-stand": Scene(
        standing(92, ((112, 110), (98, 113))),
        replace(standing(92, ((112, 110), (98, 113))), ankles=((92, 193), (80, 172)), feet=(0, -30)),
        ALONG,
        arrows=((50, 190, 50, 166),),
    ),
    "heel-raise": Scene(
        AT_COUNTER,
        replace(AT_COUNTER, hip=(95, 106), ankles=both(94, 185), feet=(-38, -38)),
        COUNTER,
        arrows=((60, 192, 60, 164),),
    ),
    "toe-raise": Scene(AT_COUNTER, replace(AT_COUNTER, feet=(36, 36)), COUNTER, arrows=((107, 180, 107, 158),)),
    "weight-shift": Scene(
        seen_standing(95, ((66, 109), (126, 109)), 20),
        replace(seen_standing(106, ((66, 109), (126, 109))), ankles=((75, 192), (115, 192))),
        ALONG,
        arrows=((52, 40, 80, 40),),
        front=True,
    ),
    "side-steps": Scene(
        seen_standing(62, ((36, 110), (92, 110)), 6),
        replace(seen_standing(82, ((58, 110), (116, 110)), 6), ankles=((56, 192), (112, 192))),
        ALONG,
        arrows=((120, 170, 150, 170),),
        front=True,
    ),
    "heel-to-toe-walk": Scene(
        replace(standing(88, ((110, 110), (92, 113))), ankles=((98, 193), (79, 193))),
        replace(standing(108, ((130, 110), (114, 113))), ankles=((98, 193), (117, 193))),
        ALONG,
        arrows=((52, 176, 84, 176),),
    ),
    "march-in-place": Scene(
        standing(92, ((112, 110), (98, 113))),
        replace(standing(92, ((112, 110), (98, 113))), ankles=((92, 193), (106, 164)), feet=(0, -14)),
        ALONG,
        arrows=((60, 160, 60, 132),),
    ),
    "standing-side-leg-lift": Scene(
        seen_standing(90, BEHIND, 8),
        replace(seen_standing(90, BEHIND, 8), ankles=((82, 192), (138, 184))),
        ALONG,
        arrows=((134, 148, 158, 158),),
        front=True,
    ),
    "wall-stand": Scene(
        replace(standing(80), hip=(78, 114), lean=14, head=30),
        replace(standing(74), hip=(70, 114), ankles=both(78, 193)),
        (at("wall behind", 58),),
        arrows=((108, 70, 108, 34),),
    ),
    "wall-plank": Scene(
        replace(leaning(96, 10, both(148, 70)), elbows=((146, 92), (146, 92))),
        replace(leaning(76, 22, both(148, 60)), elbows=((146, 84), (146, 84))),
        (at("wall", 152),),
        arrows=((64, 176, 44, 176),),
    ),
}
