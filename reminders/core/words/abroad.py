"""The wish to hear no more in languages that the reader does not read otherwise: it holds in any language.

`RULES` stand in plain letters, in the notation of reading/patterns.py; `SCRIPTS` hold what is written in other letters.
Only words of a message are here, or phrases that hardly speak of anything else: an exercise is stopped in them too.
"""

import re

RULES = {
    "opt_out": """
        ^ bitte|bittte ,? aufhoren|aufhoeren|abmelden|abbestellen
        keine ~ nachrichten|nachricht|mitteilungen|meldungen|sms
        hort|hoert|horen|hoeren ~ auf
        nicht mehr schreiben|schicken|senden|schreibt|schickt
        abmelden|abbestellen|austragen
        lassen ~ mich ~ ruhe
        arretez|arreter|arrete|cessez|cesser ~ messages|message|textos|texto|sms|envoyer|ecrire|envois
        arretez|cessez ,|.|$|svp|merci
        plus de|aucun messages|message|textos|texto|sms|rappels
        ne ~ plus recevoir|envoyer|ecrire|envoyez|ecrivez|contacter
        mecrivez|menvoyez|envoyez|ecrivez plus
        desabonner|desabonnez|desabonnement|desinscrire|desinscrivez|desinscription
        laissez moi tranquille
        stop|stoppez|halte aux|les|ces|vos messages|textos|sms
        basta|niente|stop con? gli|i|questi? piu? messaggi|messaggini|sms|avvisi
        non ~ piu ~ messaggi|messaggini|sms|avvisi|ricevere|niente
        non scrivetemi|scrivermi|mandatemi|mandarmi|inviatemi|contattatemi piu
        smettetela|smettete|smettila|smetta ,|.|$|di|con|per
        cancellatemi|toglietemi|disiscrivetemi|disiscrivermi|cancellarmi
        parem|pare|para|chega de me|mandar|enviar|escrever|mensagens|mensagem|sms
        nao ~ mais ~ mensagens|mensagem|receber|recados
        nao me mande|mandem|manda|envie|enviem|escreva|escrevam|escreve
        tirem|tira|tire|remova|removam|retirem ~ lista|numero
        descadastrar|descadastra|descadastre|cancelar ~ inscricao
        tigilan|itigil|ihinto|tumigil
        huwag|wag ~~ magtext|magpadala|itext|mensahe|text
        ayaw|ayoko ~ text|mensahe|magtext
        geen ~ berichten|berichtjes ~ meer
        niet meer sturen|berichten|appen
        stop|stoppen met ~ berichten|sturen|appen
        uitschrijven|afmelden
        nie ~ wysylac|wysylajcie|wysylaj|pisac|piszcie|smsow
        przestancie|przestan ~ pisac|wysylac|smsy|$
        wypiszcie|wypisz|wyrejestruj
        dung ~ nhan|gui ~ tin|nua
        khong ~ nhan ~ nua
        ngung ~ nhan|gui
        tingzhi|ting fa|zhi|faxin|duanxin
        buyao|bie ~ fa|fale|xinxi|duanxin
        bu yao ~~ fa|duan|xinxi|duanxin
        tuiding|quxiao
        ostanovite|prekratite|otpisatsya|otpishite|otpisat
        pishite ~ bolshe
        bolshe ~ pishite|nado
        sispann|rete ~ voye|mesaj|ekri
        pa voye ~ mesaj|anko
        message|messages|msg|sms mat bhejo|bhejna|bhejiye|karo
        mat bhejo|bhejna|bhejiye
        message|messages|msg|sms band karo|kijiye|karein|kar
        sluta skicka|skriva|smsa|meddela
        inga fler|mer meddelanden|sms
    """,
}
_ANYWHERE = (
    "退订|退訂|取消订阅|取消訂閱|不要再[发發]|别再[发發]|別再[发發]|不要[发發]|отпис|отпиш|не пишите|не присылайте"
)
_ALONE = "停止|取消|停|стоп|хватит|прекратите|остановите|توقف|أوقف|وقف|إلغاء|الغاء|중지|그만|수신거부|停止して|やめて|रोको|बंद करो"
SCRIPTS = re.compile(rf"{_ANYWHERE}|\A\W*(?:{_ALONE})\W*\Z")
