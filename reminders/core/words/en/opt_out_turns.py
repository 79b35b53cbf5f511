"""English wishes to hear no more in roundabout words, what only sounds like one, and stretches of time beside it.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

RULES = {
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
    "pause_span": """
        from the? # _? to|till|until|through|thru the? #
    """,
    "pause_until": """
        til|till|until|untill WEEKDAY|mon|tues|wed|thurs|fri
        till|until|til thanksgiving|christmas|easter|spring|summer|winter|fall|january|new
    """,
}
