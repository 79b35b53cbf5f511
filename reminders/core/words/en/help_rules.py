"""English rules for help with the service, and for those who are not the person meant.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

RULES = {
    "help": """
        how ~ do|can i tell|give|report you|my|the
        talk|speak|chat to|with a|an real|actual|live? person|human|someone
        whats|what the y|n|letter|number|numbers for|mean
        not|dont sure|know how to answer|reply|respond|use
        are you|is this the|a clinic|office|doctor|hospital
        dont|not know ~ what|which|how ~ push|press|type|answer|reply|say|put|hit
        who|whos is? ~ texting|messaging me|us
        do i ~ just? write|text|answer|reply|respond|type back|here
        what ~ do|are|does the? numbers|letters mean|for
        dont|not understand|know what ~ means|is|mean
        what ~ y3|y|n means|mean|is
        does|will|do this|it|these|i ~ cost|charge|pay|charged
        how much ~ cost|costs|text
        ^ HELPKEY $
        ^ HELPKEY HELPKEY* please|me|$
        ^ help menu|commands|options|info|!me $
        who is|are|r|this ~ this|that|it|you|texting|sending|these
        ^ who|whos is|are|r|dis|dat this|that|you|dis|it
        whos this|that
        who ~ texting|sending
        who am i ~ texting|talking
        what is|are this|these|that number|text|texts|messages|about|for|service|thing|line
        what|whats is|are|this|these number|service|texts|messages|line
        what is this
        whats this
        how does|do|this|it ~ work
        how do|can i ~ use|answer|reply|respond|work|text|stop|change|send
        how ~ use ~ this|it|thing|system|service|line
        what ~ do i ~ text|reply|answer|type|say|put|send|write
        what ~ supposed to ~ text|reply|answer|type|say|put|write|send
        is this ~ person|robot|computer|bot|machine|real|human|automated|clinic|scam|legit|spam
        are you ~ person|robot|computer|bot|machine|real|human|automated|legit|scam
        am i ~ talking|texting ~ person|robot|computer|bot|machine|human
        real person|human
        what|which ~ words|commands|codes ~ text|use|send
        do i ~ text back|reply|answer|respond
        dont|not|cant ~ understand|know|figure|get ~ how ~ work|works|use|answer|reply|text|system
        how ~ get ~ help
        where|where's ~ these|this ~ coming|from|texts
        who sent
        what company|clinic|office|place
        need help ~ text|this|using|with
        how ~ works
        instructions ~ text|reply|service
    """,
    "help_key": """
        ^ HELPKEY $
        ^ HELPKEY HELPKEY* please|me|$
    """,
    "own_number": """
        this is my new number|phone|cell
        this is my|the number|phone|cell now ,? use|text|send
        this is the number i use
        use this number|phone|one|cell from|now|instead|please|,|.|$
        my new number|phone|cell is
        my number is now|this
    """,
    "wrong_number": """
        ^ who|whos is? !this !that !it !you !texting !sending !there _ ,|.|? this is|im|is _ ,|.|$
        who is|are|s _ .|,|? this is _ phone|number|cell|mobile|line
        ^ not my text|texts|message|messages|exercises|phone|number
        new phone ,? who
        who is|are _ ,|.|? ~ my phone|number
        youre|you|ur|your texting|messaging a stranger|kid|child|business|restaurant|store|school|office|shop ,|.|$
        nobody|noone|no one by|with|of that name
        i dont|do not know any|a|no|this|your clinic|therapist|pt|therapy|physio ,|.|$
        not who|whom you|youre|your looking|want|after|think
        ^ not me ,|.|$
        ^ not _ phone|number
        you|youve|you've|u reached|called|texted|got a|the? WRONG
        this aint|isnt|not him|her|them|he|she ,|.|$
        theres|there is? no|nobody ~ named|called|by
        WRONG NUMBERWORD
        WRONG ~ NUMBERWORD
        you|u|ya|yall got|have|want|reached ~ WRONG
        no NUMBERWORD|one|body ~ here|by ~ name
        nobody|no one ~ by|here|named|called ~ name|that|here
        dont|do not|never ~ know ~ _ _? $
        i dont|do not know any|anyone|anybody|a|no|who|you !if !why !how !about
        dont know ~ anyone|anybody|person
        not my ~ therapy|number|exercises|message
        im|i am|this is|isnt|aint|isn not _ $
        im not _ $
        this isnt _ $
        this is not _ ,? $
        isnt|not ~ phone|number anymore
        you ~ mistaken|wrong|confused
        isnt|is not ~ her|his|their ~ phone|number|anymore
        wrong house|person|number|lady|guy|people
        mixed up ~ number|person
        think ~ you ~ wrong
        i|we dont|do not|never|didnt ~ sign|signed ~ up|for
        never signed
        i|we never ~ therapy|clinic|patient|physical
        not|dont ~ patient|therapist|therapy|physio|pt
        who is _ $
        new|got|this ~ number|phone ~ last|new|belonged|used|previous
        moved|changed|had ~ number|phone ~ ago|years|person
        doesnt|dont|does not live|work ~ here|anymore|there
        this is a _? _? $
        meant for ~ someone|somebody|else|another|other
        someone else
        not for me $
        had this number
        i am a
        who dis
    """,
    "opt_out": """
        stop|quit writing|mailing|phoning|ringing to? me|us|my
        ^ please? discontinue ,|.|$|i|we|my|now
        ^ REMOVE me|us|my number? ,|.|$|pls|please|thanks
        no to the|these|your|any? TEXT|TEXTNOUN
        switch these|those|the|your|all|them? TEXTNOUN? off
        switch off these|those|the|your|all? TEXTNOUN
        dont|do|never tex|texted|txt me|us|this
        bin|ditch|junk|trash|burn my|this|our number|phone|contact
        not get|getting these|those|them|any anymore|again|ever|,|.|$
        TEXTNOUN ~ ,|. ~ cut it|that|them out
        would|d like|wish|prefer|love|appreciate to discontinue|stop|cancel|end|terminate|quit|unsubscribe|opt|cease ~ TEXTNOUN|TEXT|out|these|this|from
        text|texts|messages|message|msgs ~~ turn|shut|switch it|them|this off ,|.|$|please|now
        like|want|wish|prefer to discontinue|terminate|end the|these|your|all|my|receiving TEXTNOUN|TEXT
        give over|up with? the|these|your TEXTNOUN|TEXTVERB
        make|let|be|is this|that|it be? the|your|my last|final TEXTNOUN|one|time you|u|i|that|ever|,|.|$|please
    """,
    "opt_out_not": """
        kids|children|sons|daughters|family|son|daughter|grandkids|friends dont|never|doesnt|hardly|wont even? text|call|message|write
        this is my number|phone|cell|mobile now|use
        push off with|from|of|the|my|a|using|on
        is # a stop
        wouldnt|wont|couldnt|dont|not give up|trade|miss|lose these|the|your|those TEXTNOUN
        took|taking the|my|that|those|this? EXWORD EXWORD* one|ones|thing|things? off|out|from
    """,
    "opt_out_past": """
        didnt|never|not|dint mean|want|intend|meant|ask to opt|stop|unsubscribe|quit
    """,
    "pause_span_not": """
        had|have|having|got|with|this|the|my pain|ache|hurt|cough|cold|it for|since # days|weeks|months|hours|years
        how many weeks|days|months|week till|until|before|to
        months|weeks|years|days|month|week|year of this|these|it|your|that|them|texts
    """,
    "pause_not": """
        had|have|having|got|with|this|the|my pain|ache|hurt|cough|cold|it for|since # days|weeks|months|hours|years
        how many weeks|days|months|week till|until|before|to
        months|weeks|years|days|month|week|year of this|these|it|your|that|them|texts
    """,
    "pause_sure_not": """
        had|have|having|got|with|this|the|my pain|ache|hurt|cough|cold|it for|since # days|weeks|months|hours|years
        how many weeks|days|months|week till|until|before|to
        months|weeks|years|days|month|week|year of this|these|it|your|that|them|texts
    """,
    "wrong_number_not": """
        wrong number in|on|for|there my|the|last|that|earlier|before|sorry
    """,
    "pause_span": """
        from the? # _? to|till|until|through|thru the? #
    """,
    "pause_until": """
        til|till|until|untill WEEKDAY|mon|tues|wed|thurs|fri
        till|until|til thanksgiving|christmas|easter|spring|summer|winter|fall|january|new
    """,
}
