"""English words that the reader's own number and scope rules ask for, whatever the language."""

CONCEPTS = {
    # scope
    "NOBODY": "nobody",
    "OWNERMARK": "my our a the",
    "WITHOUT": "without",
    "WROTE": "wrote said typed put",
    "ANSWER_SUBJECT": "i im ive we my",
    "THIRD_DID": "he she shes hes",
    "IN_YEAR": "in since back of",
    "WASHIM": "was is",
    "ASKEDME": "asked asks asking ask",
    "HOPE": "hope hoping glad read reading",
    "ANSWER_NO": "no nope nah naw n nay",
    "VERB_PAST": "took fell had got went hit slipped tripped missed skipped feeling felt forgot",
    "OBJECT_MARK": "with to at for from by on of visiting watching babysitting seeing tell told ask",
    "RELATIVE": "who that which whose",
    "ASKS": "should do what who whom when how call stop can could would is will where may advise",
    "HAPPENED": "got get fell was had felt have am feel keep since after when happened",
    "WOULD": "might could would may can suppose supposing",
    "AGOMARK": "ago back last since past",
    "THROUGH": "through thru over around",
    "SLIPWORD": "slipped tripped stumbled slid toppled slip trip tripping slipping stumble lost",
    "SUBJECT_I": "i im ive we me",
    "FUTURE": "will gonna going ill plan planning try trying to about havent wont would hope getting need want shall tomorrow can not",
    "QUESTIONER": "should do does can could what how when why which is are if would who did shall may",
    "WASWORD": "was were is are went",
    "LETTERWORD": "a",
    # numbers
    "TOOHARD": "hard tough difficult heavy much easy",
    "GOINGBACK": "going go goes went come coming came be",
    "NOMORE": "no not nothing greater more higher worse over above than exceeding",
    "THATNUM": "that",
    "PASTVERB": "was were started began wrote first came left had woke got went did called saw talked texted answered signed joined met broke hurt fell injured visited enrolled arrived used spoke told emailed replied",
    "ATMOVE": "on with when walking moving standing during sitting resting at going",
    "FROM_SCALE": "from on of scale",
    "TO_SCALE": "to",
    "OUTOF_THIRDS": "thirds third quarters quarter fifths halves",
    "MINUSWORD": "minus negative",
    "GOAL": "target goal",
    "RATINGWORD": "vas nrs eva painlevel",
    "NUMBERSAY": "number mine",
    "YESKEY": "y yes yep yeah yup",
    "YESKEY_NOT": "x each per leg side sides hold holds o old",
    "ALLWELL": "zzallwell",
    "YES_OTHER": "s",
    "OVER": "over",
    "HALF_LINK": "point",
    "OF_MONTH": "of",
    "ITEM": "item exercise",
    "NOTNUM": "not no isnt wasnt",
    "DE": "zzde",
    "A": "zza",
    "RATESAY": "say says call rate put give figure guess rank rates calls gives puts score",
    "AGE_WAS": "was",
    "WHENWORD": "when",
    "SENDER": "i we he she my",
    "MISTAKE": "mistake wrong typo error thumb",
    "AGE_BEFORE": "im turned age aged am",
    "AGE_NEXT": "years year yr yrs and so but now today this next in yo old",
    "UNTIL_WORD": "until till til thru",
    "PAINISH": "pain pains ache aches discomfort soreness hurt hurts pian payne achiness hurting ached aching sore achy throbbing painful tender hurtin bothers bothering bothered stings stiffness ouch pn tenderness painlevel twinge burning grumbled",
    "PAINNOUN": "pain pains discomfort soreness pian pn ouch ache stiffness",
    "RATE": "scale rate rating",
    "OF_SCALE": "of in",
    "EACHWORD": "each apiece per",
    "SIDEBOTH": "both each",
    "SELFFIX": "wait no actually sorry correction scratch oops mean meant",
    "AGAIN_": "again",
    "AGAIN": "again then another more",
    "PLUS": "plus",
    "ANOTHER": "another",
    "THEN": "then",
    "AGAINST": "against",
    "MORE_REPS": "more reps rep again",
    "MORESETS": "full complete whole more good solid extra easy of straight total",
    "SETS_WORD": "sets rounds",
    "CLOCKPREP": "at around by til till until before after past since about from",
    "SAYS_RATE": "says say said call called calling rate rated rating give gave put guess figure honest id ranks rank score scored maybe probably like bout about approximately roughly ish",
    "ARTICLE": "a an about bout maybe",
    "ISH": "ish tops max maximum",
    "JUST_AT": "just at only still maybe",
    "IN_BODY": "in on for",
    "ALLDONE": "all everything",
    "INSTEADOF": "instead",
    "SAIDWORD": "gave write said put typed wrote sent texted told reported entered hit",
    "YESTERDAYISH": "yesterday yday",
    "LASTTIME": "last usually normally lately typically before used always ago week month winter summer",
    "USEDTO": "used",
    "BEFOREWORD": "before beforehand starting",
    "AFTERWORD": "after afterward afterwards after",
    "SELF_FIX": "x",
    # exercises
    "ONE_OR_PART": "one ones exercise exercises thing things part stuff ups up",
    "STATUS": "yes yep yeah yup ya done no nope not skipped skip did didnt complete completed finished finish ok okay good fine check emojiyes emojino emojisad none y n full all partial half only nope naw nah left easy hard skipped",
    "STATUS_BEFORE": "no not skipped skip did done finished only just except but without minus didnt do completed missed",
    "LISTING": "and n plus or nor also then & / the my a both as for well",
    "PLACEWORD": "on during doing from in at after since while reaching when by over under against",
    "ITEMSIGN": "number item exercise ex",
    "LEADS": "the my of on for with at a and all in those these her his that to part doing do did it them set some each sets or any got get my through also then both a reps time times just even one ones",
    "REST_ALL": "rest everything else others all",
    "SYMPTOM": "pain pains dizzy dizziness falls fall fell numb numbness tingling tingly chest breath lightheaded faint fainting vertigo weak weakness or nor shortness pins needles spells swelling problems issues stuff palpitations blackouts nausea headache headaches",
}
RULES = {
    "opt_out_key": """
        ^ STOPKEY $
        ^ STOPKEY STOPKEY+ $
        opt ~ out
        unsubscribe|optout|stopall
    """,
    "opt_in_key": """
        ^ STARTKEY $
        ^ STARTKEY please|now|again|texts|messages $
        unstop|subscribe|optin|resubscribe
    """,
    "help_key": """
        ^ HELPKEY $
        ^ HELPKEY HELPKEY* please|me|$
    """,
    "pause_span": """
        until|till|thru|for ~~ SPAN|WEEKDAY|MONTH|DATE|next|spring|summer|fall|winter|further|notice
        until|till the? #
        # SPAN
        a|couple|few|next ~ SPAN
    """,
    "pause_until": """
        back|return ~ #|WEEKDAY|MONTH|DATE|next
        until|till|thru
    """,
    "pause_sure": """
        PAUSEIT ~ TEXT|reminders
        PAUSEIT me|everything|things|these|them
        on hold
        until|till|thru ~ #|WEEKDAY|MONTH|DATE|next|the|further
        no|dont ~ TEXT ~~ until|till|for|while
    """,
    "resume_sure": """
        ready ~ start|go|begin|resume|continue
        STARTIT|resume ~ AGAIN|reminders|texts
        im back ,?
    """,
    "reschedule_sure": """
        SWITCH ~~ to ~ WEEKDAY|DAYTIME|CLOCK|#
        INSTEAD ~ WEEKDAY|DAYTIME
        WEEKDAY|DAYTIME|CLOCK ~ INSTEAD
        reschedule
    """,
    "later_sure": """
        not yet
        havent ~ yet
        later today|tonight
    """,
    "tomorrow": """
        TOMORROW
    """,
    "skip_sure": """
        didnt|havent|never do|get|did|done
        ^ NO|NOPE $
        ^ NO|NOPE ,|.|
        SKIPS today|it|them
        no ~ EXERNOUN
        not today
    """,
    "yes_report": """
        ^ YES $
        ^ YES YES* ,? # $
        ^ YES ,|.
        ^ YES DID|i|all|sir|maam|mam|to|we|they|it|done|ALL
    """,
    "amount_unknown": """
        lost count
        dont|cant|couldnt|not ~ remember|recall|know|sure|tell|say ~ how|count|many|you
        lost track
        didnt count
    """,
    "none_done": """
        ^ NONE|NOPE|no $
        ^ NONE of|,|.|today
        ^ not any|one|a
        ^ NOPE
        ^ zero $
    """,
    "rest_not": """
        REST no|not|none|skipped|nope|zero
        no REST
        skipped|skip the? REST
        never|didnt got|get|touched|touch|do to? the? other|others|rest
        not the REST
    """,
    "others_not": """
        other|others # no|not|none|skipped|nope|didnt|will|nah|na
        skipped|skip|didnt|not the? other #
        sat out the? rest|others
    """,
    "others_done": """
        other # ~ done|did|finished|fine|good|complete|completed|ok|yes|bag|yep|too|as
        did|done|finished the? other #
    """,
    "rest_done": """
        everything else done|did|finished|fine|good|complete|ok|all|i|yes|went
        everything else $
        did|done|finished ~ REST
        REST ~ done|did|finished|fine|good|complete|completed|too|yes|ok|as
        the rest too
    """,
    "part_sure": """
        half
        ALL but|except|minus|cept|besides|save
        ONLY # SET
        ONLY @
        most of
        not ALL
        SKIPS ~ @
        had to stop
    """,
    "done_plain": """
        DONE
        did ~ EXER|ALL
    """,
    "day.today": """
        today|todays|tonight
        this morning|afternoon|evening
    """,
    "day.yesterday": """
        yesterday|yesterdays|yday
        last night|nights|evening
    """,
    "near_day": """
        today|now
    """,
    "slip": """
        ate it
        SLIPWORD
    """,
    "self_fix": """
        wait no|,|that|i|actually|pain|it|make
        no wait
        no make
        i mean
        scratch that
        make that
        sorry #
        sorry i|pain|make
        or rather
        actually #|pain
        correction
    """,
    "ex.done": """
        done|did|finished|completed|complete|finish|got|knocked|managed|through|thru|went|accomplished|accomplish|nailed|crushed|performed|banged|stood|reached
    """,
    "ex.done_before": """
        only|just|do|made|doing
    """,
    "ex.done_after": """
        yes|yep|yeah|yup|emojiyes|check|full|fine|good|ok|okay|y|easy|all|ya|perfect|too|also
    """,
    "ex.part": """
        half|halfway|partial|partly|partially|sorta|kinda
        some of
        most of
        one|left|right|good|bad side|leg|foot ONLY?
        ONLY one|left|right|good side|leg|foot
        didnt|couldnt|cant finish|complete
        not all
        a few
        a bit|little
    """,
    "ex.not": """
        no|nope|none|nah|skipped|skip|missed|zero|emojino|not|nothing|forgot|omitted|avoided|ditched|nixed|skiped|zip|zilch|deferred|declined|na
        didnt|dont|cant|couldnt|havent|never|wouldnt|wasnt
        didnt|dont|cant|couldnt|havent|never|not|wouldnt do|get|did|try|manage|done|finish|attempt|make|have|happen ~ to|time?
        left out|off|undone
        leaving|leave out|off
        passed on
        sat out
    """,
    "ex.but": """
        except|but|minus|without|excluding|cept|besides|excep|barring|save|xcept
        apart from
        other than
    """,
}
