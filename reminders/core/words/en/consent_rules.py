"""English rules for the wish to hear no more, or to hear again.

A label a block, a pattern a line; the notation stands in reading/patterns.py.
"""

RULES = {
    "opt_out": """
        leave|lay|knock|pack|jack|give off|over|in TEXTVERB me|us
        leave|lay|knock off TEXTVERB .|,|$|please|will
        pack|jack|knock it|them|this in|off with the|these|your TEXTNOUN
        ^ i? want|wanna out $
        ^ i? want|wanna out of this|it ,|.|$
        leave|lay|bugger|clear|back off with the|these|your|all? TEXTNOUN
        finished|through|done with your|these TEXT|service
        no longer require|requires the|this|your|these|any? TEXTNOUN|service
        refrain from TEXTVERB|sending|contacting|messaging
        wish|want|like|ask|asked to be removed|unenrolled|deleted ,|.|$|please|now
        TEXTVERB|call me|us|here no more ,|.|$|please
        get my|our|this number|name|phone off this|your|the
        not|dont|doesnt|never wish|want|care|need to hear from $
        not|dont|doesnt|never wish|want|care|need to hear from you|yall|u|ya ,|.|$|no|any|anymore|again|further|ever|please
        stop|quit blowing|lighting|filling up? my|our|this phone|cell|inbox
        ^ s t o p ,|.|$
        STOPIT my participation|enrollment|enrolment|subscription|membership
        terminate the|these|all|your TEXTNOUN
        decline|refuse further|any|more|all|these|your TEXTNOUN
        no thank|thanks you? to the|these|your|any? TEXT
        ^ TEXTNOUN off ,|.|$|please
        silence|mute these|this|them for good|ever
        want|like|need|wish|have|prefer the|these|those|your|all|my TEXTNOUN to? be? DISCONTINUED
        put a stop to this|these|the|your|all these|the|your? TEXT|TEXTNOUN
        never|didnt ask|asked to? get|receive|for these|your|any|this|the? TEXT|TEXTNOUN
        ^ please|pls|kindly put a stop to this|these|it
        like|want to cancel $
        these|those|your|the TEXTNOUN are|is unwanted|unwelcome
        knock|cut it|that|them off|out ~ with ~ TEXT|TEXTNOUN
        knock|cut off|out ~ TEXT|TEXTNOUN
        enough already|now ~ TEXT|TEXTNOUN
        already enough ~ TEXT|TEXTNOUN
        rather|prefer not ~ get|receive|have|be ~ TEXT|these|them|this|texted|any
        make|get these|them|TEXTNOUN ~ stop|end
        no|not|never|dont ~ further|more|any|another|anymore|again ~ TEXTNOUN ~ from you|yall|u|please|$ !today
        wont|dont|no ~ need|want|needing|wanting ~ TEXTNOUN ~ ever|again|anymore|longer
        dont|not|no|never|withdraw ~ consent|agree ~ to|for ~ TEXT|further|any|this|these
        done with ~ TEXT
        TEXTNOUN ~ stop coming
        ^ STOPKEY $
        ^ STOPKEY STOPKEY+
        ^ STOPKEY this|these|those|it|with|bothering|harassing|pestering|spamming mess|crap|nonsense|foolishness|garbage|text|texts|messages|me
        ^ STOPKEY ,|.
        ^ STOPKEY i|my|we|ive|im
        ^ STOPKEY it now|already|please|ok ,|.|i|$
        no texts|messages|msgs !today !came !yet
        leave me|us be|alone
        do not|dont reply|respond|write
        no more beeps|pings|buzzing|notifications|of
        lose this|my|the number
        ^ opt out
        opt ~ out
        optout|unsubscribe|stopall|unsub|unsuscribe|revoke
        ^ STOPKEY please|now|pls|it|this|already|immediately|all|asap|everything $
        ^ please STOPKEY|STOPIT $
        ^ i said STOPIT
        unsubscribe|unsuscribe|unsubcribe|unsub me|us|please|from|this|now
        REMOVE ~~ from|off ~ TEXTNOUN|list|lists|service|system
        lose this|our number
        be|get|been taken|removed|dropped off|from ~ $
        how ~ STOPIT|unsubscribe|cancel ~ TEXTNOUN
        ^ discontinue|desist|unsubscribe|cease $
        cease|discontinue|kill|ditch|nix|block|end ~ TEXTNOUN
        STOPIT everything|all ,|AND|. the? TEXTNOUN|mail|mails|emails|calls too|also|included?
        STOPIT the? TEXTNOUN|mail|mails|emails AND the? TEXTNOUN|mail|mails|emails
        block me
        STOPIT ~ TEXTVERB
        STOPIT ~ TEXTNOUN !till !until
        STOPIT the|these|those|all|my|your|this|sending|getting ~ TEXTNOUN
        please STOPIT these|this|them|it
        make it|this|them stop
        STOPIT these|those|them|this please|now|$
        STOPIT ~ send|sending
        REMOVE ~ from|off ~ TEXTNOUN|list|lists|this|system|service|here|phone
        REMOVE me|us|him|her|this ~ off|from
        REMOVE me|us|him|her|this out of
        REMOVE me|us out ,|.|$
        REMOVE my ~ name|number|phone|cell|mobile|email|info|contact|details|CLIENTLIKE|SPOUSE|PERSON ~ off|from|out
        REMOVE me|us|number $
        REMOVE my|this|our number|phone|name|info|contact
        TEXTNOUN ~ REMOVE my name|number
        take ~ off ~ list
        off ~ list
        no more|longer ~ TEXT
        no|dont more TEXT
        dont|not|never|nor|wont|doesnt|aint ever|even|you|u|yall|please|just|dare|bother|want|need|care|wish|like|point|use|sense|reason|try|keep|think|of|to|in|have* TEXTVERB ~ me|us|this|my|again|anymore ~ MORE|again|phone|number|please|$
        no more|need|point|use|sense|reason|cause ever|even|you|u|yall|please|just|dare|bother|want|need|care|wish|like|point|use|sense|reason|try|keep|think|of|to|in|have* TEXTVERB ~ me|us|this|my|again|anymore ~ MORE|again|phone|number|please|$
        didnt|never want|wanted|ask|asked|agree|agreed|consent|say|said ~ TEXTVERB me|us
        dont|never ~ TEXTVERB me|us|this
        do not|never ~ TEXTVERB me|us|this
        not TEXTVERB me|this
        dont|not|no|cant|doesnt ~ WANT ~ TEXT
        dont|not|no|doesnt ~ WANT ~ RECEIVE|more ~ TEXT|these|them|this|$
        dont|not|no|doesnt WANT ~ these|them|this|it ~ anymore|more|longer
        dont|doesnt WANT these
        no longer ~ WANT|wish ~ TEXT|RECEIVE|service|this|program|these|participate|be|reminders
        leave me|us alone
        lose my number
        dont|not want|wish|interested ~ to ~ participate|be ~ program|anymore|contacted|texted|list|service|part
        not interested
        cancel ~ TEXTNOUN|service|subscription|this|these|me|everything|my
        ^ cancel
        i quit ~ TEXT|program|service|this
        im done with|getting ~ TEXT|these|this|messages|service
        want|wanna|like|need ~ out of ~ this|program|TEXTNOUN|list
        end ~ TEXTNOUN|service|this|subscription
        quit ~ TEXTVERB|TEXTNOUN|sending|bugging|bothering|these
        quit bugging|bothering|pestering
        enough ~ TEXT
        stop bugging|bothering|pestering|harassing|spamming
        spam|harassing|harassment
        block|blocking ~ number|you
        please ~ discontinue
        deactivate|unenroll|disenroll
        sign|signed me out|off
        turn|shut ~ off ~ TEXT|these|this|service
        turn|shut ~ TEXTNOUN|these|this off
        withdraw ~ consent|permission|me|from
        revoke ~ consent|permission
        no TEXT please|$
        no TEXTNOUN ~ anymore
        ^ no more $
        ^ no more please
        no more of|these|them
        cease and
        dont need ~ TEXT|these|this|reminders ~ anymore|more|longer|$
        not need ~ TEXT|these ~ anymore|more|longer
        stop it ~ TEXT|phone
        stop with ~ TEXT
        get rid of ~ TEXT|these
        get me off
        i want off
        out of this
        opting out
        do not ~ TEXTVERB|contact|text|message
        do not ~ send ~ TEXT|these|me|any
        dont send ~ TEXT|these|me|any|more|this
        can|could|will|would|wont|cant you|u|yall please|pls|kindly|just|possibly? STOPIT TEXTVERB|TEXTNOUN
        can|could|will|would|wont|cant you|u|yall please|pls|kindly|just|possibly? STOPIT the|these|those|your|all|my? TEXTNOUN
        can|could|will|would|wont|cant you|u|yall please|pls|kindly|just|possibly? REMOVE me|us|my|this off|from|number|name|,|.|$|please
        how|where do|can|would|could|should i|we|you|one unsubscribe|unsuscribe|unsubcribe|unsub|opt|deregister|unenroll
        how|where do|can|would|could|should i|we|you|one STOPIT getting|receiving|the|these|those|your|all|my? TEXTNOUN
        how|where do|can|would|could|should i|we|you|one get off|out of? this|these|your|the? TEXTNOUN|list|thing|service|.|$
        how|where do|can|would|could|should i|we|you|one turn|shut|switch this|these|them|the TEXTNOUN? off
        how|where do|can|would|could|should i|we|you|one turn|shut|switch off this|these|them|the TEXTNOUN?
        how|where do|can|would|could|should i|we|you|one get|make these|them|the|this TEXTNOUN? to? stop
        strike|scrub|wipe|scratch|knock|kick|cross|drop me|us|my|this name|number|phone? from|off your|the|this|that|all? TEXTNOUN|list|lists|system|books|records
        strike|scrub|wipe|forget|destroy|trash|erase my|this|our number|phone|contact|info ,|.|$|please|from|now|off
        switch|turn ~ off ~ TEXTNOUN
        never signed|asked|agreed|consented up|to? for|to? this|these|that|it|any ,|.|so|and? please|just? stop
        ^ arrete|arretez|arreter|aufhoren|pare|parar|smettere|detente ,|.|$|les|de|s
        dont|not|doesnt need a|my|your|the phone|machine|computer|robot|thing ~ ~ . no more ,|.|$|please
        . no more please|pls ,|.|$
        sod|bugger|piss|naff|push|buzz|shove|rack|feck off ,|and? stop|quit|leave|with
        quit|stop pinging|buzzing|dinging|beeping|hounding|annoying|nagging|badgering|hassling|texing me|us|my
        wish|want|like|need|prefer|love to? stop|quit|cancel|end|cease getting|receiving|being the|these|those|this|them|your|all|any|texted|messaged|contacted|reminded|TEXTNOUN|$
        wish|want|like|need|prefer|love to? stop|quit|cancel|end|cease the|these|those|all|your|my? TEXTNOUN
        how|where do|can|would|could|should i|we|you|one STOPIT getting|receiving|being the|these|those|this|them|your|all|texted|messaged|contacted|reminded|$
        ^ remove|delete ,|.|$|please|pls|now|at|immediately
        ^ do not|dont call|text|contact list please|pls? $
        appreciate|grateful|thankful|obliged|nice|kind|better|glad|happy|prefer it? if you|u|yall would|could? stop|stopped|quit|ceased TEXTVERB|TEXTNOUN|sending|these|the|this
        desist|refrain from TEXTVERB|sending|contacting|messaging|these|this
        request|requesting|demand|demanding|want my|a|the|immediate? removal|deletion|unsubscription
        wont|dont|not be? needing|requiring|wanting these|them|those|the|your|any TEXTNOUN? any|no? more|anymore|longer|again
        TEXTNOUN are|is no|not longer? needed|required|wanted|necessary|welcome
        no further|additional TEXT|contact|communication|correspondence required|needed|please|wanted|necessary|$
        no more|longer contact|communication|correspondence please|pls|$
        give it a rest with the|these|your? TEXTNOUN|TEXTVERB
        shove|stick|stuff your|the|these TEXTNOUN
        ^ piss|bugger|sod|buzz|naff|feck|eff|shove off ,|.|$
        ^ go away please|now? $
        ^ get lost ,|.|$
        can|could we|you|u|i just|please? stop|end|quit the|these|all|those|your TEXTNOUN
        ^ ok|okay|alright|right|look|hey|listen|hello|hi|yes ,? please|just? stop|unsubscribe now|it|please|this|,|.|$
        can|could|will|would|wont|cant you|u|yall please|pls|kindly|just|possibly? REMOVE my? CLIENTLIKE|him|her|them|mum off|from
        keep|keeps TEXTVERB me|us|this ,|.|and|so? please? stop it|this|that|now|$
        leave me|us in peace
        ^ please|pls|kindly? dont|not TEXTVERB .|$
        ^ please|pls|kindly? do not TEXTVERB .|$
        text|message|bother|pester|annoy someone|somebody else
        cut|knock|pack|jack it|that|this out|off|in with the|these|your|all TEXTNOUN
    """,
    "opt_out_not": """
        off the? sick|injured|casualty list
        carry|keep on|going with the|your|these TEXTNOUN
        if|when you|u|yall|ya dont|do hear|heard not? from me
        dont|not|never ever? stop|quit|end the|these|your|my|texting|sending|reminding|messaging
        cancel today|tonight|tomorrow|todays|tomorrows
        cancel this|my morning|afternoon|evening|session
        STOPIT|quit sending|texting|messaging|reminders|reminding|texts me|us|them|it? on|at|before|so #|CLOCK|WEEKDAY|early|late|dawn ~~ send|text|make|do|use|better|instead
        take me|us off WEEKDAY|mondays|tuesdays|wednesdays|thursdays|fridays|saturdays|sundays
        dont|not|never take|remove|drop|cut|kick|scratch|strike me|us|my off|from
        how long am|are|is|do|will|should i|we|this|it|they|you
        interested in !TEXT !TEXTNOUN !this !these !your !receiving !getting !being !any !the !it !continuing !participating !more !them !hearing
        no more of? the|my|these|those? EXWORD
        REMOVE|take|leave|drop|get the|my|that|those|this? EXWORD EXWORD* one|ones|thing|things? off|out|from !my !this
        REMOVE|take|leave|drop|get the|my|that|those|this? EXWORD EXWORD* one|ones|thing|things? off|out|from my|this !phone !cell !mobile !number
        can|could|will|would you|u|yall please|pls|kindly|just|possibly? REMOVE|take|leave|drop the|my|that|those|this? EXWORD !TEXTNOUN !EXWORD
        can|could|will|would you|u|yall please|pls|kindly|just|possibly? REMOVE|take|leave|drop the|my|that|those|this? EXWORD EXWORD !TEXTNOUN
        be|get|been dropped|picked off|up at|by|in|around
        be|get|been taken up at|by|in|around
        be|get|been taken off at|by|in|around !WEEKDAY !tomorrow !today !tonight !once !now !then
        so you|youd|ya|yall would? leave me be|alone
        want|wanna out of this|the|my pain|bed|chair|house|misery|room|place
        next|bus|truck|rest|pit|last|first stop !TEXTVERB !TEXT !sending !it !all
        minutes|hours|seconds|hour|minute|forever|long to stop
        never|didnt|havent|dint get|got|receive|received|gotten
        PAIN|HURT|SEVERE ~~ make it|this|them stop
        awful|terrible !TEXTNOUN ~~ make it|this|them stop
        ^ no more today|now|tonight !or !nor !and !,
        ^ no more today|now|tonight ,|or|nor|and !or !nor !ever !never
        dont|never|do|not stop|quit|cancel ~ sending|TEXT|texting|these|them ~ these|them|me|us|it?
        dont|never stop
        need to hold|pause
        stop holding|pausing
        cancel|stop WEEKDAY
        off pause|hold
        didnt mean ~ unsubscribe|stop|quit
        how|where ~ number
        IF|should|why ~ i|we ~ STOPIT|quit|stop
        when ~ i|we ~ STOPIT|quit|stop !getting !receiving
        ^ do ~ i|we ~ STOPIT|quit|stop
        ,|.|and|so|or|then|what do ~ i|we ~ stop|quit|end|halt|cancel|cease !TEXTVERB !TEXTNOUN !sending !getting !receiving !the !these !those !your !all !my
        ,|.|and|so|or|then|what do ~ i|we ~ stop|quit|end|halt|cancel|cease the|these|those|your|all|my !TEXTNOUN
        can ~ i|we ~ stop|quit|end|halt|cancel|cease !getting !receiving !TEXTNOUN !the !these !your !all !my
        can ~ i|we ~ stop|quit|end|halt|cancel|cease the|these|your|all|my !TEXTNOUN
        STOPIT ~ till|until !hell !kingdom !doomsday
        STOPIT ~ while
        STOPIT ~ when !i !im !ive
        STOPIT ~ when i|im|ive !ask !asked !asking !tell !told !telling !say !said !saying
        stop|quit|end|halt for !$ !the !good !ever !gods !heavens !heaven !christ !christs !petes !fucks !cryin !crying !always !all !my !me !us !him !her !goodness
        STOPIT ~ for a|an|now|today|tonight|tomorrow|this|next|couple|few|several|some|awhile|WEEKDAY|MONTH|DATE|lunch|dinner|supper|breakfast|xmas|christmas|easter|thanksgiving
        STOPIT ~ for # more? SPAN|TIMEUNIT|night|nights
        STOPIT ~ for # or|to|DASH # SPAN|TIMEUNIT|night|nights
        STOPIT ~ for the !love !last !sake !umpteenth !patient !number !phone !person !lady !man !family !record !CLIENTLIKE
        STOPIT ~ for one|over|about|around|almost|maybe|at ~ SPAN|TIMEUNIT|night
        cancel my !TEXTNOUN !exercise !exercises !daily !participation !account !subscription !number !service !membership ~ for
        STOPIT ~ after !today !tonight !this !WEEKDAY !tomorrow !all !everything !it
        before ~ STOPIT !TEXTVERB !TEXTNOUN !sending !the !these !your
        full stop
        out of this|the|my|that pain|bed|chair|house|misery|room|place|car|bath|tub|seat|sofa|mess|rut|recliner
        get|make these|them|the|my band|bands|EXWORD to? stop|end !TEXTVERB
        no need to TEXTVERB me|us? today|tomorrow|tonight|until|till|next|WEEKDAY
        no need to TEXTVERB me|us? this !phone !number !line !cell
        no need to TEXTVERB me|us? on !this !my
        REMOVE|take|get me|us off|from the|my|these|that|those carry|carries|hinge|hinges|rows|row|tandem|raises|pushups|band|bands|pain|pills|meds|medication|tablets|painkillers|blood !TEXTNOUN
        ^ cancel that ,|. pain|its|it|was|should|i|#|YES|done|make
        stop|quit TEXTVERB|sending me|us|them|these|it|texts? at|during|in|on the|my? night|nights|evening|evenings|morning|mornings|weekend|weekends|dinner|supper|lunch|work ,|.|and|but do|send|text|make|switch|try|use? it|them|me? in|at|to? the? DAYTIME|instead
        no|dont need|have to do any? more
        no|dont need|have to do more|any|anything
        had to|i|we stop|stopped|quit
        i|we stopped|ended
        i|we stop|quit|end !these !those !your !getting !receiving !TEXTNOUN !the !this !my
        i|we stop|quit|end the|this !TEXTNOUN !now
        dont|never|not stop|quit|cancel|end|unsubscribe|stopping
        i|we|he|she|they didnt|wont|wouldnt ever? stop|quit|cancel|end|unsubscribe|stopping
        didnt|wont|wouldnt|couldnt|cant stop|quit|end|stopping !TEXTVERB !TEXTNOUN !sending !the !these !those !your !this !my !all
        didnt|wont|wouldnt|couldnt|cant stop|quit|end|stopping the|these|those|your|this|my|all !TEXTNOUN
        stop at !once !last
        stop in !future
        stop after|halfway|exercising|half
        stop doing !this !that !it
        stop doing this|that|it !$ !, !. !to !please !now
        stop here|there !with
        stop the exercise|exercises|workout|set|band
        stop|stopped !TEXTVERB !TEXTNOUN !sending !the !these !those !this !your !it !all ~ after|half|set|halfway|early|by|hurting
        stop|stopped !TEXTVERB !TEXTNOUN !sending !the !these !those !this !your !it !all ~ at !once !last
        stopped !TEXTVERB !TEXTNOUN !sending !the !these !those !this !your !it !all ~ because
        stop because|cause|cuz|since of|it|its|they|PAIN|HURT|SYMPTOM
        stop because|cause|cuz|since my|i|the|both !want !dont !moved !have !am !hate !cant !dog ~ PAIN|HURT|SYMPTOM|BODY|tired|TIRED
        stop|stopped the|these|those|it|all|this !TEXTNOUN !now !please after|half|halfway|early|at|because|by|hurting
        pain|pains|hurt|hurts|hurting|ache|aching|bleeding|cramp|cramps|cramping|throbbing will|wont|to|does|doesnt|didnt|never|not|would|wouldnt|just|has|had|really|ever|isnt|cant|finally|it|me* stop|stopped !TEXTVERB !TEXTNOUN !sending
        stop by
        nonstop|stoped
        do not ~ send|text ~ until|till
        cancel ~ appointment|visit|appt !TEXTNOUN
        cancelled|canceled
        remove ~ shoes|brace|cast|stitches|boot
        end of
        end|ended up|at|with|on
        in the end
        to stop ~ smoking|drinking
        tell|told me to stop
        doctor|dr|doc said|says|told|wants|want me|to|i|that|should|must|have|can|need|better|id|ill* stop !TEXTVERB !TEXTNOUN !sending
        when can i stop !getting !receiving
    """,
    "opt_out_denied": """
        ^ i? didnt|dint|couldnt even|really? bother ,|.|$|today|tonight
        so|and|but|cause|cuz|just i? just? didnt|dint|couldnt bother ,|.|$|today|tonight
        ^ please|pls|no|hey? ,? dont|never stop|quit|cancel ,|. ,? i like|love|enjoy|need these|them|the|your|getting|it
        ^ please|pls|no|hey? ,? dont|never stop|quit|cancel ,|. ,? these|they|it help|helps|are|is
        ^ please|pls|no|hey? ,? do not stop|quit|cancel ,|. ,? i like|love|enjoy|need these|them|the|your|getting|it
        ^ please|pls|no|hey? dont|never stop|quit|cancel|end TEXTVERB|TEXTNOUN|sending|the|these|my|those|them
        ^ please|pls|no|hey? do not stop|quit|cancel|end TEXTVERB|TEXTNOUN|sending|the|these|my|those|them
    """,
    "opt_out_past": """
        told|said ~ stop
        had ~ STOPIT|quit|stopped|cancelled|unsubscribed|removed
        by mistake|accident
        i|had stopped|cancelled|canceled|unsubscribed|quit ~ by|TEXT|them
        accidentally|accident
    """,
    "opt_out_key": """
        ^ STOPKEY $
        ^ STOPKEY STOPKEY+ $
        opt ~ out
        unsubscribe|optout|stopall
    """,
    "opt_in": """
        put|added|placed|included back on|in the|your|my? list|texts|reminders|program
        ^ i? want|let|put|take me? back in|on ,|.|$
        put|get|want|sign me? back on|in|up the|your|for? list|texts|texting|messages|reminders
        get|turn|have|want ~ TEXT ~ back|again ~ on|please|$
        get|turn|have ~ TEXT back on
        turn|switch em|them|these|those|it back on
        rejoin|reenroll
        changed ~ mind ~~ text|send|quitting|stopping|start
        undo that|it|the ~ stop|unsubscribe|please|$
        undo ~ stop|unsubscribe|quit
        ^ STARTKEY $
        ^ STARTKEY please|now|again|me|texts|messages|$
        STARTIT ~ TEXTVERB
        STARTIT ~ TEXTNOUN
        unstop|subscribe|optin|resubscribe|reactivate|reenroll
        opt ~ in
        opt me back
        SIGN|signed|put|add|enroll ~ me|up ~ AGAIN|back|up|on|in
        SIGN ~ me ~ up
        SIGN ~ up ~ TEXT|program|service|again|for
        add me
        put me ~ on ~ list
        WANT ~ TEXT ~ AGAIN|back
        WANT ~ TEXT
        want|like|love|wish ~ receive|receiving|get|getting|start|join ~ TEXT|them|these|again|those
        turn ~ TEXT ~ on|back
        turn ~ on ~ TEXT
        can i ~ get|start|join ~ TEXT|reminders ~ AGAIN
        bring back ~ TEXT
        send|text ~ me ~ AGAIN|back ~ please|now|$ !list !today
        miss ~ TEXT
        changed my mind ~ TEXT|start|want|send
        reinstate|restart
        back on the list
        enroll me
        start me ~ AGAIN|up|back
    """,
    "opt_in_not": """
        start|begin sending|texting|messaging them|it|these|those|me|the? TEXTNOUN? at|after|around|before|later|earlier|in|on
        want|like|need|wish|have|prefer the|these|those|your|all|my TEXTNOUN to? be? DISCONTINUED
    """,
    "opt_in_key": """
        ^ STARTKEY $
        ^ STARTKEY please|now|again|texts|messages $
        unstop|subscribe|optin|resubscribe
        wish|want|like to begin|start|resume receiving|getting the|your|these|those|my? TEXTNOUN
    """,
}
