"""The scene of every exercise, by its code: poses, furniture and arrows as data, read by drawings.py."""

from dataclasses import replace

from reminders.core.drawing_poses import (
    Pose,
    Scene,
    at,
    both,
    moved,
    on_the_back,
    seen_sitting,
    sitting,
    standing,
)
from reminders.core.drawing_scenes_standing import STANDING_SCENES

CHAIR = (at("chair", 70),)
SIT = sitting()

SITTING_SCENES = {
    "sit-to-stand": Scene(
        replace(SIT, lean=24, hands=both(100, 146)),
        replace(standing(104), hip=(102, 114)),
        CHAIR,
        arrows=((150, 160, 150, 112),),
    ),
    "seated-knee-straighten": Scene(
        SIT,
        replace(SIT, ankles=((104, 193), (143, 148)), feet=(0, 76)),
        CHAIR,
        arrows=((132, 186, 146, 164),),
    ),
    "seat-squeeze": Scene(
        sitting(both(68, 150)),
        moved(sitting(both(68, 148)), 0, -4),
        CHAIR,
        arrows=((18, 146, 44, 146), (98, 96, 98, 64)),
    ),
    "armrest-push-up": Scene(
        sitting(both(84, 128)),
        moved(sitting(both(84, 128)), 4, -16),
        (at("armchair", 70),),
        arrows=((128, 150, 128, 118),),
    ),
    "band-chest-press": Scene(
        sitting(both(86, 106)),
        sitting(both(116, 102)),
        CHAIR,
        (at("band", 58, 112),),
        ((126, 88, 152, 88),),
    ),
    "band-row": Scene(
        sitting(both(114, 108)),
        sitting(both(84, 116)),
        (*CHAIR, at("post", 182)),
        (at("band", 178, 112),),
        ((120, 92, 92, 92),),
    ),
    "elbow-pull": Scene(sitting(both(116, 104)), sitting(both(84, 116)), CHAIR, arrows=((120, 92, 92, 92),)),
    "arm-curl": Scene(sitting(both(60, 150)), sitting(both(88, 104)), CHAIR, (at("weight"),), ((112, 140, 112, 110),)),
    "seated-overhead-reach": Scene(SIT, replace(SIT, hands=((94, 144), (86, 50))), CHAIR, arrows=((112, 84, 112, 50),)),
    "seated-heel-raise": Scene(
        SIT,
        replace(SIT, ankles=both(106, 183), feet=(-42, -42)),
        CHAIR,
        arrows=((140, 194, 140, 170),),
    ),
    "chin-tuck": Scene(replace(SIT, chin=17), SIT, CHAIR, arrows=((112, 80, 86, 80),)),
    "chair-back-press": Scene(
        replace(sitting(), lean=10, hip=(62, 150)),
        replace(sitting(), lean=-6, hip=(58, 150)),
        (at("chair", 68, 64),),
        arrows=((98, 78, 74, 78), (98, 108, 74, 108)),
    ),
    "seated-belly-brace": Scene(
        sitting(both(60, 150)), moved(sitting(both(60, 150)), 0, -3), CHAIR, arrows=((108, 128, 76, 128),)
    ),
    "seated-march": Scene(
        SIT,
        replace(SIT, ankles=((104, 193), (102, 172))),
        CHAIR,
        arrows=((134, 176, 134, 144),),
    ),
    "palm-press": Scene(
        seen_sitting(((86, 146), (104, 146))),
        seen_sitting(((92, 116), (98, 116))),
        (at("chair front", 95),),
        arrows=((40, 116, 62, 116), (150, 116, 128, 116)),
        front=True,
    ),
    "towel-pull": Scene(
        seen_sitting(((84, 124), (106, 124))),
        seen_sitting(((68, 124), (122, 124))),
        (at("chair front", 95),),
        (at("towel"),),
        ((50, 124, 26, 124), (140, 124, 164, 124)),
        front=True,
    ),
    "shoulder-blade-squeeze": Scene(
        replace(
            seen_sitting(((72, 146), (118, 146))),
            marks=(((85, 106), (87, 124)), ((105, 106), (103, 124))),
        ),
        replace(
            seen_sitting(((66, 142), (124, 142))),
            marks=(((91, 108), (92, 126)), ((99, 108), (98, 126))),
        ),
        (at("chair front", 95),),
        arrows=((30, 112, 56, 112), (160, 112, 134, 112)),
        front=True,
    ),
    "seated-knee-press": Scene(
        seen_sitting(((70, 160), (120, 160))),
        replace(seen_sitting(((64, 160), (126, 160))), knees=((72, 162), (118, 162))),
        (at("chair front", 95),),
        arrows=((56, 172, 32, 172), (134, 172, 158, 172)),
        front=True,
    ),
}

BACK = on_the_back()
SIDE = Pose(
    (98, 186),
    ((22, 191), (90, 181)),
    ((108, 194), (177.8, 186)),
    lean=-90,
    head=-82,
    feet=(0, 60),
    knees=((130, 189), None),
    elbows=((38, 196), None),
    elbow=-1,
    has_nose=False,
)
FRONT = Pose(
    (104, 186), both(97, 179), both(182, 192), elbows=((75, 180), (75, 180)), lean=-90, feet=(-4, -4), facing=-1
)
KNEELING = Pose(
    (86, 150),
    both(138, 197),
    both(48, 193),
    lean=84,
    knees=((86, 192), (86, 192)),
    feet=(-170, -170),
)

FLOOR_SCENES = {
    "bridge": Scene(
        BACK,
        replace(BACK, hip=(95, 164), lean=-118, head=-86, hands=both(97, 196), elbows=((72, 195), (72, 195))),
        arrows=((60, 158, 60, 128),),
    ),
    "lying-rest": Scene(on_the_back(both(76, 180)), on_the_back(both(91, 196)), (at("cushion", 8, 196, 26, 6),)),
    "belly-brace": Scene(BACK, BACK, arrows=((76, 150, 76, 178),)),
    "heel-slide": Scene(
        BACK,
        replace(BACK, ankles=((134, 193), (166, 193)), feet=(0, 30)),
        arrows=((140, 160, 172, 168),),
    ),
    "face-down-lift": Scene(
        FRONT,
        replace(FRONT, lean=-74, head=-80, elbows=((77, 174), (77, 174))),
        (at("cushion", 82, 192, 34, 8),),
        arrows=((14, 170, 14, 142),),
    ),
    "side-lying-hip-abduction": Scene(
        SIDE,
        replace(SIDE, ankles=((108, 194), (170, 149))),
        (at("cushion", 10, 190, 32, 10),),
        arrows=((120, 148, 120, 122),),
    ),
    "hands-and-knees-reach": Scene(
        KNEELING,
        replace(
            KNEELING,
            hands=((186, 132), (138, 197)),
            ankles=((48, 193), (14, 186)),
            knees=((86, 192), None),
            feet=(-170, -100),
        ),
        arrows=((154, 118, 182, 112), (50, 158, 22, 168)),
    ),
}

SCENES: dict[str, Scene] = STANDING_SCENES | SITTING_SCENES | FLOOR_SCENES
