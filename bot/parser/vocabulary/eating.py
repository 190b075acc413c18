"""What leads in food and means something else elsewhere (`went for`, `demolished`, `dug into`).

Patterns over the words of a message: `bot/parser/eating.py` claims them only where food stands
right behind. Written for this project, from memory.
"""

from typing import Final

from bot.parser.vocabulary import phrases

#: No slips of other words (`chomping` is no chopping).
EATING_VERBS: Final = phrases(
    """
    {tuck|munch|nibbl|polish|demolish|wolf|scoff|devour|gobbl|chomp|chow|feast|graz|lunch|brunch
      |din|sipp|slurp|finish|plat|dish|guzzl|gulp|neck|down|chew|nosh|inhal|consum|ingest|enjoy
      |savour|savor|grabb|microwav|reheat|cheat|digg}{ing|ed}
    """
)

#: What may stand between a number and its unit (`1 deep bowl`, `2 heaped spoons`).
HOW_FULL: Final = phrases(
    """
    deep, heaped, heaping, flat, level, rounded, full, shallow, soup, tea, wooden, serving, generous
    good, wee, proper, normal, regular, single, dinner, side, saucer, child size, kids, dessert
    """
)

EATING: Final = (
    # how one eats, drinks and dishes up
    f"(?:{'|'.join(EATING_VERBS)})(?: (?:in ?to|down on|down|on|off|up|at|away at|through|out|with))?",
    "(?:pick(?:ing|ed) at|hoover(?:ing|ed) up|serv(?:ing|ed) up|dug in ?to|ate up|eating up)",
    "(?:tuck in ?to|dig in ?to|get stuck in ?to|chow down on|polish off|finish off|wolf down"
    "|plate up|dish up|sit down (?:to|with)|pick at|enjoy|demolish)",
    "(?:sat|sitting|set|setting|settin|sitting myself) down (?:to|with|for)",
    "(?:et|ett|eatn|eten|aten|hav|havn|consume|i take|taken)",
    # what one chose or came by
    "(?:went|going|opted|plumped|settled|settling|go) for|(?:decided|settled) on",
    "(?:making|made|make) do with|cheat(?:ed|ing) (?:with|on)|ended up (?:having|with|eating)",
    "(?:had|got|getting|having|made|fixed|treated|treating|grabbed|bought|ordered|cooked|poured"
    "|helped|helping)(?: (?:myself|meself|ourselves|us))(?: to)?",
    "(?:heated|warmed|whipped|knocked|rustled|cooked|fixed) up",
    "ordered(?: in)?|got a (?:takeaway|takeout|takeaway of)",
    "(?:was|were|got|been|being|am) (?:given|served|offered|handed)",
    "(?:(?:the|my) )?(?:hospital|nurses?|canteen|they|staff|kitchen|carers?|ward|school|airline)"
    " (?:gave|served|brought|had)(?: (?:me|us))?",
    "(?:could )?(?:only )?managed?(?: to (?:eat|have|get down|swallow))?",
    "(?:ive|weve|youve|shes|hes|i have|we have|she has|he has) got(?= )",
    "giving (?:him|her|them)(?: (?:some|a))?(?= )",
    "forced down|forced myself to (?:eat|have)|(?:couldnt|could not) resist",
    # how the plate is told of
    "(?:tiffin|din dins|din din|sehri|sahur|suhur|nightcap|takeaway|takeout|treat|cheat|munchies)(?: today| was| is)?(?: :)?",
    "(?:today|tonight|tonite) (?:is|was|has been)",
    "(?:first|1 st) bite(?: of)?|here goes|back for more",
    "(?:first|main|last|biggest|only) meal (?:of the day|today)",
    "(?:heres |here is )?what (?:i|im|i am|ive|we|were|we are)(?: just)?"
    " (?:having|eating|ate|had|eat)(?: (?:now|today|tonight))?(?= :| -| is| was)(?: is| was)?",
)
