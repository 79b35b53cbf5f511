"""English rules for help with the service, and for those who are not the person meant.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

RULES = {
    "help": """
        is|iz this|that the? right|correct number|line for|of
        ^ who r|are u|you ,|.|$|?
        whose|whos number|phone|line is|am
        who|whos is|are|keeps? sends|sending|sent|send these|this|them|all
        ^ GREET? ~ is|iz this|that the clinic|office|therapist|doctors|physio ,|.|$|?
        how ~ switch|move|change|transfer ~ my? new? phone|number|cell
        dont|not|cant understand|follow this|these|your|the message|messages|text|texts
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
    "wrong_number_not": """
        wrong number in|on|for|there my|the|last|that|earlier|before|sorry
    """,
}
