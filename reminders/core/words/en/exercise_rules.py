"""English rules for what is said of single exercises, and for days.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

RULES = {
    "ex.done": """
        done|did|finished|finish|complete|completed already|alredy >THE|@
        DONE
        did|do|done the|my|your|those|these|all? SWEAR >@
        squeezed|fit|fitted|snuck|sneaked|got|worked|threw in >THE|@
        gotten in|done|through? >THE|@
        i|we manage >THE|@
        knocked|knock|banged|cranked|pounded|churned out
        done|did|finished|completed|complete|finish|got|knocked|managed|through|thru|went|accomplished|accomplish|nailed|crushed|performed|banged|stood|reached
    """,
    "ex.done_before": """
        all|both of? the? @
        took|had|gave|have|take|give a? good|quick? stab|crack|shot|go|bash|try|whack|whirl at|with|on
        only|just|do|made|doing
        ONLY manage|get
        could|able to? ONLY? manage|do|get
    """,
    "ex.place": """
        @ got|came|went all? twisted|tangled|stuck|loose|undone|caught|wrapped
        @ knocked|kicked|killed|wiped|wore|whipped|took the|me|my
        @ wrong|right|correctly|properly|badly|backwards
        @ was|were|is|are the? FILL* worst|hardest|toughest|killer|tricky|trickiest|sorest|challenge|struggle
        @ was|were|is|are FILL* hard|tough|difficult|brutal|heavy|painful|sore|uncomfortable|achy|tiring !DONE
        @ was|were|is|are getting|feeling|becoming|coming
        @ hurt|hurts|bother|bothers|bothered|burn|burned|burns|ached|aches|pulled|stung
        @ made|makes|make|gave|give|gives|got|had|has my|me|it|one
        @ felt|feel|feels|seem|seemed|seems
        @ FILL* SMALL ,? FILL* everything|rest|others
        love|loved|loving|hate|hated|enjoy|enjoyed|dread|dreaded|despise|adore|adored|cursing|cursed|cussing the|those|these|my|doing? @
        love|romance with the|those|these|my|doing? @
    """,
    "ex.done_after": """
        @ ,? no prob|problem|problems|issue|issues|trouble|sweat|biggie|worries
        @ x >,|.|$
        @ was|were|is|are FILL* hard|tough|difficult|tiring|heavy|killer|brutal|painful|sore ,? but|though i? did|managed|finished|completed|got it|them|those|through|em|all
        @ ,? and|plus? thats|that is|was? all|it|everything ,|.|$|i|for
        @ only ,|.|$|today|tonight|this|for
        @ alone
        @ ,? nothing else|more|further ,|.|$|today|tonight
        @ ,? aye
        @ ,? thats|that|thatll is|was|be? all|it|everything ,|.|$|i|for
        @ ,? thats|that is|was? as far
        tick|ticked|fully|yes|yep|yeah|yup|emojiyes|check|full|fine|good|ok|okay|y|easy|all|ya|perfect
        too|also !no !not !none !nope
    """,
    "ex.part": """
        @ ,? sort|kind of ,|.|$
        @ hurt|hurts ~ quit|stopped|stop
        @ just|only? the once
        did|do|got|get the? left|right|good|bad|one side|leg|foot
        didnt|couldnt|cant|not do|get|manage|finish? the left|right ,|.|$
        EXCEPT the|my? last|second|third|final|# set|sets|round|rep|reps of|on? the|my?
        could|can? ONLY hold|held|holding
        half|halfway !a !an
        half a|an !minute !min !hour !hr
        partial|partly|partially|sorta|kinda
        some of
        most of
        @ ONLY on? the|my? left|right|one ,|.|$
        one|left|right|good|bad side|leg|foot ONLY?
        one|left|right|good|bad arm|hand|knee ONLY
        ONLY on|with? the|my? one|left|right|good|bad|strong|stronger|weak|weaker side|leg|foot|arm|hand|knee
        @ ,? mostly|hardly|barely|partly|nearly
        didnt|couldnt|cant finish|complete
        not all
        a few
        a bit|little of
        @ a bit|little ,|.|$
        @ on|with the|my? left|right|good|bad|one side|leg? only
        @ ,? but|and? not on? the|my left|right|other|second side|leg|one? ,|.|$|because|cause|cos|as|since
        only|just # in|on the last|second|third|final|fourth
    """,
    "ex.not": """
        took|take|taking a? raincheck|pass on
        took|take|taking a? rain check on
        also|too|either no|not|none|nope
        took|taking|crossed|scratched|struck|crossing the|my? @ off|out
        cancelled|canceled
        give|giving up on the|my|this|that? @
        i didnt|couldnt|cant do|manage|get was|is|were|are the|my? @
        skipping|omitting|dodging|avoiding|ditching
        no more @
        did|do|done|got|managed N0|none|nothing|nada|zip|zilch
        did|do|does|could|can|have|has|had|was|would not|never
        strike|struck|struck out on|with
        skipped|skip|skipt|missed|omitted|avoided|dropped|left ONLY >THE|@
        didnt|dont|not like doing? the|my|those|these @
        couldnt|cant|cannot|couldn get|bend|kneel|climb|reach down|up|on|onto ~ to|for do|try|attempt?
        never touched|tried|attempted|started|begun
        did|do|have|has|had|could|would not yet|even? touched|tried|attempted|started|begun|made|gotten|got to?
        havent|hadnt|didnt yet|even? touched|tried|attempted|started|begun|gotten|got to?
        held|hold|holding off on? the|my @
        skipt|skippt|skpped|skiped|skippd
        leave|left that|out @
        but|and knot do|did|the|my >THE|@|do|did
        balked|bailed|gave|chickened|wimped|wimped up|out|at|on on|of|with?
        drew the line at
        said no to
        didnt|dont|couldnt bother|bothered with|w?
        no !prob !problem !problems !issue !issues !trouble !sweat !biggie !worries !pain !discomfort !PAINISH
        nothing !else !more !further !next !compared !beside !like !new !to
        nope|none|nah|skipped|skip|missed|zero|emojino|not|forgot|omitted|avoided|ditched|nixed|skiped|zip|zilch|deferred|declined|na
        didnt|dont|havent|never|wouldnt|wasnt
        cant|cannot|couldnt >$|,|.|@|do|get|manage|finish|even|today|it|them|those|THE|CAUSE|at|with|yet|either|though|EXER|complete|attempt|try|make|be|to|hold|ALL
        didnt|dont|cant|cannot|couldnt|havent|never|not|wouldnt do|get|did|try|manage|done|finish|attempt|make|have|happen|complete|perform|touch|reach ~ to|time?
        didnt|couldnt|cant|cannot|wouldnt|not|didn face|fancy|stomach|brave|lie|lay|kneel down|up|about|to? for|on|with|to? do|try?
        left out|off|undone
        leaving|leave out|off
        passed on
        sat out
        left the|my|those|them|this|these @
        leave|leaving the|my|those|them|this|these @
        no time|energy|room|strength|way for|to
        ran out of time|steam|energy before|for|to
        wasnt|isnt|werent|not|unable able? to do|perform|manage|get|finish|attempt|try
        gave|giving @ a miss|pass|rest|skip|swerve|break
        gave|give|giving the|my @ a miss|pass|rest|skip|swerve|break
        neither|nor
        nil|nought|naught|naw|dismissed|excused|benched|vetoed|postponed|shelved|unfinished !pain
        too tired|sore|weak|wobbly|stiff|shaky|dizzy|scared|hard|heavy|painful|much|pooped|beat|worn for|to|w
        abandoned|deserted|dodged|refused|bagged|scrapped|ducked|cheated
        wont|wouldnt do|be|get|try
        will|would not do|be|get|try
        lost|dropped the @
    """,
    "ex.but": """
        excepting|omitting
        except|minus|without|excluding|cept|besides|excep|barring|save|xcept
        but !did !managed !done !finished !completed
        apart from
        other than
        aside from
        exception of
        exclusion of
        not counting|including
        sans
        <lot|all|them|everything|done|it|finished|complete|completed|today|managed|rest bar
        bar|save the|my >@
    """,
    "ex.not_after": """
        @ is|are|was|were out ,|.
        so @ out ,|.
        @ i|we did|do|could|can|have not
        @ ,? all|both? got|get|were|was|went|is|are|go|stayed|been|being|be left|skipped|dropped|missed|undone|unfinished|untouched|ignored|neglected|omitted|passed out|off|behind|over|up|undone? ,|.|$|today|tonight|because|as|cause|cos|since|for|this
        @ ,? all|both? got the boot|chop|push|ax|axe|heave
        @ ,? all|both? fell by the wayside
        @ negative|neg ,|.|$
        @ n ,|.|$
        @ _ _? _? ,? so|and i|ive|we? just? left|skipped|dropped|ditched it|that|them|those|this ,? out|off|alone|be? ,|.|$|today
        @ not yet? attempted|tried|done|touched|started|performed
        @ i|we didnt|couldnt|havent|cant|wont
        @ got|get|were|was left|skipped|dropped|missed out|undone|off|behind? ,|.|$|today|because|as
        @ ,? so|and i|ive|we? just? leave|left|skip|skipped|dropped|drop|ditch|ditched it|that|them|those|this out|off? ,|.|$|today|alone
        @ were|was|is|are out ,|.|$|today|of
        @ ,? so|and left|skipped|dropped it|that|them|those out? ,|.|$|today|alone
        @ ,? too hard|heavy|much|painful|difficult|tiring ,|.|$
        @ was|were|is|are|proved FILL* beyond|past me
        @ being|getting|was|were|got? dismissed|excused|skipped|omitted|dropped|excluded|benched|postponed|shelved|cancelled|canceled ,|.|$|today|as|because
        @ defeated|beat|bested|defeats|eluded me
        @ got the better|best of me
        @ wasnt|werent|isnt|arent happening|possible|doable|gonna|going
        @ ,? tomorrow|later|pending
        @ was|were|is|are FILL* too? much|hard|heavy|painful|difficult|tough|sore so ,? i? not|no|skipped|left|didnt|passed
        @ ,? cross|crossed >,|.|@|$
        @ i no|nor fit|do|try|able|manage
        @ - ,|.|$
        @ was|were|is|are FILL* too much|hard|heavy|painful|difficult|tough|sore !but !so
        @ hurt|hurts FILL* too much|bad|badly
        @ has|have|had|will|must|can to? have? to? wait
        @ got|get a|an f|zero|miss
        @ didnt|never|not happen|happened
        @ is|are|was|were? for|until|till? tomorrow|later
        @ fell|fall through
        @ went by the wayside
        @ undone|unattempted|untouched|not attempted|untried
        @ i|ill|we|id will|cant|couldnt|cannot|leave|left|skip|skipped|owe|will
    """,
    "day.today": """
        today|todays|tonight
        this morning|afternoon|evening
    """,
    "day.yesterday": """
        yesterday|yesterdays|yday
        last night|nights|evening
    """,
    "ex.asked": """
        ^ can|could|should|may|shall|must|do|does i|we|he|she|it|my|mom|dad ~~ @
        . can|could|should|may|shall|must|do|does i|we|he|she|it|my|mom|dad ~~ @
        ^ is|are|was|would it|the|my|they|these ~~ @ ~~ ?
    """,
    "rest_not": """
        rest|others|remainder was|were|is|are|left? undone|untouched|unfinished
        forget|forgot|ditch|ditched|scratch|scrap the? REST|others ,|.|$|today
        REST|others i did not|nothing
        REST|others i didnt|couldnt|skipped|left|wont|havent
        REST|others can|will|must|may wait
        REST|others no|not|none|skipped|nope|zero|nah
        sat out the? rest|others
        none|nothing|zip of|on? the? REST|others
        no REST
        skipped|skip the? REST
        never|didnt got|get|touched|touch|do to? the? other|others|rest
        not the REST
    """,
    "rest_done": """
        everything else done|did|finished|fine|good|complete|ok|all|i|yes|went
        everything else $
        did|done|finished ~ REST
        REST ~ done|did|finished|fine|good|complete|completed|too|yes|ok|as
        the rest too
    """,
    "others_not": """
        not do the? other|others #?
        forget|forgot|ditch|ditched|scratch|scrap|missed|dropped the? other #
        not the? other ,|.|$
        neither|none of the? other #
        leaving|left|skipping the? other #|pair
        other #|pair|couple can|must|will|gets|get wait|keep|whistle|skipped
        other|others # no|not|none|skipped|nope|didnt|will|nah|na
        skipped|skip|didnt|not the? other #
    """,
    "others_done": """
        other # ~ i|all? fine|full|perfect|completed|done|did|good
        other # ~ all $
        other # ~ done|did|finished|fine|good|complete|completed|ok|yes|bag|yep|too|as
        did|done|finished the? other #
    """,
}
