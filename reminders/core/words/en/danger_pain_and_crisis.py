"""English rules for unbearable pain and for words of self-harm.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

RULES = {
    "danger.severe_pain": """
        PAIN|hurts|hurting ~ more than i|a|anyone|anybody|any can|could|body|person|man|woman
        PAIN ~ too much for me|anyone|anybody ,|.|$|to
        SEVERE
        worst ever|agony
        worst pain|ache|hurt ive|i|weve|ever|yet|imaginable|possible
        worst ~ PAIN ~ life|ever|had
        worst its|it ever
        CANT|cant|couldnt|cannot ~ stand|bear|take|tolerate|handle|endure ~ PAIN
        CANT|cant|couldnt ~ stand|bear|take|tolerate|handle ~ anymore|longer|more|much
        PAIN|hurts|hurting ~ CANT|cant ~ stand|bear|take|tolerate|move|walk|sleep|breathe|function|think|get|straighten
        PAIN|hurts|hurting ~~ CANT|cant|hardly|barely stand|bear|take|tolerate it|this
        hurts|hurt|hurting so bad|much i|im|that ~ cry|crying|cried|scream|screaming|holler|hollering|hollerin|cant|couldnt|threw|vomit|sick|stand|move|walk
        PAIN ~ so ~ bad|intense|severe|awful ~~ cry|crying|cried|scream|screaming|cant|couldnt|threw|vomit|sick|move|walk
        scream|screaming|screamed|crying|cried|cry|tears|sobbing|weeping|hollering|holler|yelling ~~ PAIN|agony|hurts|hurt|hurting
        PAIN|hurts|agony ~~ screaming|crying|tears|sobbing|hollering
        agony
        PAIN ~ through|thru the roof
        PAIN ~ off the chart|charts|scale
        PAIN ~ killing me
        PAINWORD|BODY|it|this ~ killing me
        is|are killing me
        severe|extreme|intense|terrible|horrific PAINWORD !in? !no
        beyond|past|over ~ ten|# ~ PAIN
        more than TEN|10
        higher than TEN|10
        pain ~ beyond|past words|bearing
        too|so ~ PAIN|painful to ~ bear|stand|move|walk
        tortured|torture
        doubled over ~ PAIN
        CANT|cant|couldnt stand it|this $
        CANT|cant|couldnt stand it|this ,|.|anymore|any|longer|no
        CANT|cant|couldnt take it|this|anymore
        off the chart|charts|scale
        cut|saw|chop|take ~ leg|arm|foot|it|hip|back off
        worst of my life
        worst ~ ive|i ~ had|felt|ever
        worse than ~ childbirth|labor|kidney
        unbearable|unreal|blinding|ungodly|murder|murderous|hellish|savage pain|hurt|hurts|ache
        pain ~ blinding|unreal|ungodly|murder|hell|horrendous|savage
        hurts ~ like hell|the devil|blazes
        beg|begging|begged ~ for ~ pain|meds|help|mercy
        shoot me now
        climbing the walls
        pain ~ beside myself
        throw|threw|throwing up from ~ pain
        pain ~ throwing|threw up
    """,
    "idiom.severe_pain": """
        deadline|deadlines|job|work|boss|traffic|heat|humidity|suspense|commute|bills|weather|schedule|pollen|allergies|kids|paperwork|homework|exam|exams|finals|midterms|essay|rent|prices|taxes|boredom|class|classes|shift|internet|wifi is|are|were|was killing me
        killing me less
        killing me softly
        killing me lol|haha
        boobs|feet|dogs ~ killing me
        never a TEN|#
        words 'severe pain'
        at severe pain
    """,
    "danger.crisis": """
        tired|sick|weary of this|my life ,|.|$
        tired|sick|weary of living|life|existing ,|.|$|anymore|now|and|but|this
        dont|not|no|never want|wanna ~ of this life|living|world
        want|wanna out of this|my life|world|misery
        want|wanna|wish|wanted|rather|like|ready|going|gonna|thinking|thought|think|hoping ~ DIE|dead|dying
        wish|wished|wishing ~ was|were|wasnt ~ dead|here|born|alive|around
        wish|hope|hoping|pray|praying ~ wouldnt|dont|didnt|would|not|god|lord ~ wake|take
        kill|killing|hang|shoot|drown|harm|harming|hurting|cutting|hurt|off myself
        end|ending|finish|finishing|took|take|taking ~ my? life
        ending it !today
        end|ending it all|already
        ending it
        SUICIDE
        dont|dunno|not|never|no|cant|cannot ~ want|wanna|wish|see ~ live|living|alive|life|wake|going|here|around|anymore !today
        dont|dont want|wanna ~ be here|around|alive|on
        dont want|wanna to? live|wake
        dont wanna|want to? go|be on|alive|living
        better|best off ~ dead|without|gone
        better off dead|gone|without
        better ~ off ~ dead|gone|ground|grave
        better ~~ if i ~ dead|gone|died
        better ~ if i ~ dead|gone|died|wasnt|werent
        world|everyone|everybody|family|they|kids|yall|you ~ better ~ without me
        no ~ point|reason|use|sense|hope ~ living|live|alive|life|going|on|anymore|here
        nothing ~ live for
        dont|cant see|know ~ point|reason|why ~~ living|alive|live|going|on|anymore|here|bother
        life ~ not|isnt|aint|no|nothing ~ worth|living|meaning
        not worth living
        cant|cannot|dont want to go on|live ~ like|this|anymore|much|without|longer|with
        cant|cannot go on
        tired|sick|done ~ living|life|being alive|existing
        done with life|living|everything|it all
        be with|join|joining ~ him|her|harold|husband|wife|walter|god|lord|jesus|again|soon
        PILLS ~~ know|thinking|counted|ready|loaded|enough|take|end|all|look|looking|saved
        thinking|thought|look|looking|counting|counted|saved|saving|staring ~~ PILLS
        take|took|taken|swallow|swallowed|taking ~ all|whole|bottle|handful|many|every ~ PILLS|meds|medicine
        overdose
        nobody|no one ~ miss|care|notice ~ me|gone|if
        no good to ~ anybody|anyone
        goodbye|goodby|farewell ~ world|forever|everyone|cruel
        wont be|here ~ much longer|tomorrow|around
        hope i dont wake
        dont ~ wake up
        self harm
        pistol|gun|rifle|shotgun|revolver|rope|noose|razor|blade ~~ looking|lookin|look|thinking|loaded|ready|out|hand|table|sitting|staring
        goodbye|goodby|farewell|suicide letter|letters|note|notes
        last ~ youll|you|yall ~ hear|see
        burden ~~ longer|decided|anymore
        see|see no|any road|way|future|hope|point|reason ~ ahead|forward|out|left|me
        stand|stood|standing|go|went ~ on|to the? bridge|overpass|roof|tracks|ledge
        not ~ alive ~ by|anymore|longer
        rather|soon|sooner not ~ be|wake ~ here|alive|up
        if i ended it
        be|join|joining|see|meet|with ~ my maker
        see my maker
        sooner|rather be with my
        enough of ~ this life|life|living
        wrote|write|writing ~ letters|goodbyes|will|note ~~ kids|family|goodbye|today
        in the ground
        meet my maker
        easier ~ if i ~ gone|wasnt|ended|died|dead
        easier ~ without me
        thought about how
        for the last time
        thoughts of ~ harming|hurting|dying|death|ending|suicide
        give up on life|living
        giving up on life|living
        burden ~~ everyone|family|kids|die|dead|gone|anymore|them|alive
        rather ~ not ~ here|alive|be
        disappear forever
        what is there to live
        why ~ living|alive|live|bother living
        jump ~ off|from|front ~ bridge|roof|train|building
        might|may as well ~ dead|die
        point|use|reason of|in|to|for living|live|life
        thinking|thought|think|want|going|about ~ jumping|jump ~ bridge|roof|train|building|window|cliff|balcony|overpass
        better ~ off|if ~ without me
        nobody|noone|one ~ miss|notice|care ~ me
        want|wish|wanted ~ it ~ all? ~ to ~ be? over|stop|end|done|finished
        tired of ~ waking|breathing|existing|trying|fighting|living|hurting and
        nobody|noone|no one ~ notice|miss|care|cry ~ if|when|me ~ gone|died|dead|disappeared|wasnt
        thinking|thought|think ~ how|ways|way ~ id|i|to ~ do|end|go
        wont|will not|dont be|plan|expect|intend ~ around|alive|here ~~ much|next|longer|appointment|tomorrow|decided|see|christmas|week
        wont be around
        cut|cutting|burn|burned|hurt|hurting myself ~ again|purpose|on
        on purpose ~~ cut|pills|hurt|myself
        motor|engine|car running ~~ garage
        garage ~~ motor|engine|running
        put ~ me out of ~ misery
        nothing|anything left ~ live|for|me
        no|any reason ~ get up|wake|live|living|stay|keep|be
        dont|do not|didnt|never ~ want|wanna|care ~ wake|live|alive|exist|see ~
        hope|hoping|pray|wish ~ dont|not|never|wouldnt|didnt|wont ~ wake|make|morning
        give|giving|gave up on life|living|everything
        said|saying|say ~ goodbye|goodbyes|goodbys
        my time ~ go|over|is
        lord|god|jesus ~ take|call|let ~ me ~ home|now|tonight|go
        ready to ~ die|go ~ home|meet|now|be
        see|saw|seen no ~ future|way out|hope|point
        whats|what is the point|use ~ living|anymore|going|any|life|all
        what for ~~ alive|living|thought|how
        better if i ~ never|disappeared|vanished|died|werent
        stockpiling|hoarding|saving ~ pills|meds
        have ~ pills|gun ~ ready|loaded|counted|right
        loaded ~ gun|pistol|shotgun|rifle
        drive|driving|steer|veer ~ off ~ bridge|road|cliff|into
        jump ~ off|from|in front
        not be here ~ tomorrow|morning
        cant do ~ life|living ~ anymore
        cant do ~ this life
        dead inside ~ end|done
        i mean living|life|dying
        not the exercise|exercises ,|. life|living|being
        everyone ~ better without
        only way out
        checking|check out ~ life|good|permanently
    """,
    "idiom.crisis": """
        LIMB keep|keeps|kept|is|are|was|were|been|started? going dead
        years off my life
        not waking up early
        want ~ it ~ to be over ~ winter|snow|election|semester|chemo|cold|heat
        tired of waking up ~ early|at|for|night|pee
        bridge say
        goodbye ~ for now
        say|said|saying goodbye to ~ my|the|grandkids|son|daughter|kids
    """,
}
