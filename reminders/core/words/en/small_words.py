"""English small words: people, time, joining and denying words. Words about exercise or the body stand elsewhere."""

CONCEPTS = {
    # stops, joins, scope
    "BUT": "but though although however except",
    "AND": "and n plus then / also or nor",
    "JOIN": "and n plus / or nor also then",
    "OR": "or nor",
    "NOT": "not didnt dont doesnt wasnt isnt arent werent havent hasnt hadnt wont wouldnt aint never didn neither nor cannot cant couldnt couldn unable",
    "NO": "no zero without nil minus none any w/o neither nor",
    "NONE": "none zero nothing nil zilch nada zip nothin",
    "NEGATOR": "no not didnt dont doesnt wasnt isnt arent werent havent hasnt hadnt wont aint never didn without none zero neither nor denies deny denied cannot nobody nobodys noones",
    "CANT": "cant cannot couldnt can't couldn unable hardly barely not cudnt",
    "NEVER": "never",
    "I": "i im ive id me my myself mine we ill our",
    "SUBJECT": "i im ive id we my",
    "MY": "my",
    "THIRD": "he she they hes shes his her hers him hers their theyre",
    "HERS": "her his hers",
    "YOU": "you your u ya yall ur youre",
    "NOWISH": "now today tonight currently rn sitting resting rest after afterward afterwards during before while when present",
    "NOW": "now today again currently rn tonight",
    "IF": "if whether",
    "HYPO": "if whether would could might may ever afraid scared worried worry worries fear risk risky prevent avoid supposing suppose chance likely so",
    "FEAR": "afraid scared worried worry fear risk prevent avoid avoiding terrified nervous case",
    "ASKING": "should can could do does is are what when how why which who would may will am did",
    "QWORD": "what whats how why which who whos when where should can could is are do does may would will am shall wheres hows",
    "MODAL": "should can could may shall must would ok okay safe alright normal supposed allowed",
    "CAUSE": "because cause cuz bc since so as coz due",
    "BLOCK": "i im ive we because cause cuz bc since so when after then but if while that he she they my and as did do",
    "ALMOST": "almost nearly near about bout practically damn darn like mightve couldve",
    "CAUGHT": "caught grabbed held saved steadied recovered hung catch grab held caught",
    "DIDNT_FALL": "didnt never not",
    # people, animals, things
    "CLIENTLIKE": "mom moms mum mums mama mamas mother mothers momma mommy ma dad dads daddy daddys father fathers papa pop pops grandma grandmas grandpa grandpas nana nanas granny gran nan grandmother grandfather wife wifes husband husbands hubby spouse aunt auntie abuela abuelita mami papi abuelo gram grammy meemaw pawpaw opa oma patient",
    "PERSON": "sister sisters brother brothers neighbor neighbors neighbour neighbours friend friends buddy son sons daughter daughters grandson grandsons granddaughter granddaughters grandkid grandkids grandchild grandchildren grandbaby grandbabies kid kids child baby boy girl niece nephew cousin uncle boss coworker aide nurse roommate lady guy man woman somebody someone everyone inlaw pal doctor dr plumber mailman driver player hubbys pastor priest teacher student tenant landlord people folks they fella dude team president actor actress character hero toddler toddlers kindergartner kindergartners coworkers classmate classmates students client customer customers colleague teammate guest sitter",
    "ANIMAL": "dog dogs cat cats puppy pup kitten cow cows horse horses mare goat goats hen hens chicken chickens bird birds hound parrot squirrel deer pet pets mule bull steer rooster hamster fish turtle pig lamb raccoon kitty pooch",
    "THING": "phone tv television power wifi internet signal price prices market stock stocks tree branch limb roof shelf book books cup glass plate lamp picture walker cane temperature temp rain snow leaves cake show movie film tablet computer battery car truck bus economy sales team bills eggs gas connection app fence bridge building church picture curtain rod ladder box boxes clock ball government ceiling pipes pipe fridge oven remote vase jar bottle button zipper temps ride",
    "STORY": "show movie film tv television novel book episode series game story news documentary soap dream dreamed dreamt character actor netflix",
    # time
    "LONGAGO": "twenties thirties forties teens teenager boyhood girlhood decades decade formerly youth young younger childhood college army navy highschool healed",
    "AGO": "ago back since",
    "PASTSPAN": "year years yr yrs decade decades month months mo winter summer spring fall january february march april june july august september october november december",
    "LAST": "last past previous",
    "USED": "used",
    "AGESPAN": "year years yr yrs decade decades month months",
    "YESTERDAY": "yesterday yday yest ystrday",
    "NIGHT": "night evening",
    "TODAY": "today tonight todays",
    "TOMORROW": "tomorrow tmrw tomorow tmw tomm tommorow tmr",
    "MORNING": "morning mornin am",
    "WEEKDAY": "monday mondays tuesday tuesdays wednesday wednesdays thursday thursdays friday fridays saturday saturdays sunday sundays mon tue tues wed weds thu thur thurs fri sat sun mwf",
    "MONTH": "january february march april may june july august september october november december jan feb mar apr jun jul aug sep sept oct nov dec",
    "ORD": "st nd rd th",
    "AMPM": "am pm oclock noon midnight",
    "AT": "at around by til till until before after past since about from",
    # politeness
    "POLITE": "hi hello hey hiya howdy thanks thank thx ty tks thnx thankyou please pls plz dear greetings cheers sincerely regards hon honey sweetie sweetheart darling maam mam sir dearie doll luv bless appreciated morning",
    "NAMEFRONT": "this is its it's it from for on behalf of",
    "TITLE": "dr doc doctor ben ms mr mrs miss therapist clinic team coach nurse you very so much everyone all y'all folks good",
    "SIGN_OFF": "sincerely regards yours respectfully cheers best love xo xoxo warmly cordially",
    "FILLER": "well so ok okay oh um uh hmm like just yeah lol haha lord honestly actually basically i id",
    "LOL": "lol haha hahaha lmao rofl hehe ha jk joking kidding",
    "ART": "a an",
    "INDEF": "a an another some other",
    "POSTPOSED": "zzpost",
    "THE": "the my his her your our",
    "THAT": "that this these those it",
    "OF": "of a for on at with in by",
    "FILL": "unchanged index peaked topped maxed crept hovered inched bumped shot jumped climbed spiked rose went dropped is was were at a an about bout around maybe like level lvl of just only still got to up it its been im id i say said call would be probably roughly approximately approx perhaps some kind sort well the my max worst peak tops but average overall rating rated score scale number as out on in this did number feels feeling felt sits hit hits reached went getting gets had have today now right am so do from between give gave or really currently both hovering ranged ranging more near close pretty roughly steady solid measly good runs running ran stayed staying remained",
    "LINK": "of to the",
    "LINK_HALF": "and a",
    "HALFWORD": "half haf hafl halve",
    "ONEWORD": "one ones",
    "ONE_NOT_AFTER": "the that this which another any every each no other wrong last first second third next big blue green red yellow wall chair heel side balance these good bad left right same new old easy hard leg standing band",
    "ONE_NOT_BEFORE": "foot side leg arm day thing who hand knee more another that hip of's i else is please was",
    "ONE_AFTER": "a about maybe only just did pain was is like to done got at around level number say call probably bout a perhaps managed finished or not said give",
    "ONE_BEFORE": "of set sets round rounds rep reps x time out through or to and",
}

NUMBERS = {
    "zero": 0, "one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8, "nine": 9,
    "ten": 10, "eleven": 11, "twelve": 12, "thirteen": 13, "fourteen": 14, "fifteen": 15, "sixteen": 16,
    "seventeen": 17, "eighteen": 18, "nineteen": 19, "twenty": 20, "thirty": 30, "forty": 40, "fifty": 50,
    "sixty": 60, "seventy": 70, "eighty": 80, "ninety": 90, "twoo": 2, "tree": 3, "fiv": 5, "tenn": 10, "thre": 3,
}  # fmt: skip
# Numbers only before a word for sets or repetitions: what dictation hears, and counting words.
NEAR_NUMBERS = {
    "to": 2, "too": 2, "for": 4, "fore": 4, "won": 1, "wan": 1, "free": 3, "couple": 2, "pair": 2, "both": 2, "tin": 10,
    "single": 1, "sex": 6, "ate": 8, "first": 1, "a": 1, "once": 1, "tu": 2,
}  # fmt: skip
COMMON = frozenset(
    "the and i to of a in is it you that was for on my are with as at be this have from or had by but some what we can"
    " out other were all your when up use how said an each she which do their time if will way about many then them"
    " would like so these her make him has two more go see no could my than first been its who now did get come made"
    " may part over after back just good me not today done feel because off very went didnt dont im ive too again only"
    " still got them did until before".split()
)
SOUNDS = (("ph", "f"), ("ck", "k"), ("exc", "ex"), ("z", "s"), ("ie", "ei"), ("ea", "ee"), ("ay", "ai"))
SPELLED_OUT = {
    "twice": "two times",
    "thrice": "three times",
    "twicet": "two times",
    "b4": "before",
    "cudnt": "couldnt",
    "cudn": "couldnt",
    "coudnt": "couldnt",
    "couldent": "couldnt",
    "havnt": "havent",
    "dident": "didnt",
    "didt": "didnt",
    "abcd": "a b c d",
    "abc": "a b c",
    "teh": "the",
    "hte": "the",
    "adn": "and",
    "stp": "stop",
    "tens": "x ten",
    "eights": "x eight",
    "twelves": "x twelve",
}
