"""The programme, in Spanish."""

from bot.entries import Step
from bot.programme.telling import Reason
from bot.programme.testing import Rhythm
from bot.words.programme import ProgrammeSentences

PROGRAMME = ProgrammeSentences(
    steps={
        Step.AS_USUAL: "comidas de siempre",
        Step.LIGHTER_MEAL: "comidas más ligeras",
        Step.MEASURED_PLATE: "un plato medido",
        Step.MOVE_AFTER: "moverse después de comer",
    },
    rhythms={
        Rhythm.DAILY: "todos los días",
        Rhythm.TWICE_A_WEEK: "dos veces por semana",
        Rhythm.WEEKLY: "una vez por semana",
        Rhythm.NEW_FOODS: "solo con comidas nuevas",
    },
    less="menos",
    more="más",
    clear="Con {later} su glucosa sube {change} {unit} {direction} que con {earlier} "
    "({tests} y {before} pruebas). Es más que el margen del medidor.",
    not_clear="Con {later} su glucosa sube {change} {unit} {direction} que con {earlier} hasta "
    "ahora. Todavía no es claro.",
    not_clear_more="Con {later} su glucosa sube {change} {unit} {direction} que con {earlier} "
    "hasta ahora. Todavía no es claro: con unas {pairs} pruebas completas más se sabría.",
    offer="Ya tiene pruebas para el siguiente paso: {step}. Cuando lo quiera, escriba "
    '"siguiente paso".',
    offer_waits="Ya tiene pruebas para el siguiente paso: {step}. Pregunte antes a su educador. "
    "Él o ella le dice si es seguro para usted.",
    offer_asked="Ya tiene pruebas para el siguiente paso: {step}. Le pregunto a su educador si es "
    "seguro para usted, y le escribo cuando lo diga.",
    fewer="{within} de sus últimas {of} pruebas completas están en las dos metas. ¿Le pido "
    "pruebas {rhythm} desde ahora?",
    fewer_waits="{within} de sus últimas {of} pruebas completas están en las dos metas. Pregunte "
    "a su educador si ya basta medir {rhythm}.",
    fewer_asked="{within} de sus últimas {of} pruebas completas están en las dos metas. Le "
    "pregunto a su educador si ya basta medir {rhythm}. Hasta entonces sigo como antes.",
    more_often="Algunas de sus últimas pruebas salieron de sus metas. ¿Le pido pruebas {rhythm} "
    "otra vez?",
    rhythm_buttons=("sí", "no"),
    rhythm_set="Bien. Le pediré pruebas {rhythm}.",
    rhythm_kept="Bien. Sigo como antes.",
    telling={
        Reason.NEVER_TESTED: "Una buena para medir: {meal}. Usted la come, y aún no tiene prueba.",
        Reason.ONE_TEST: "Una buena para medir: {meal}. Tiene una prueba, y otra diría mucho.",
        Reason.STILL_UNSURE: "Una buena para medir: {meal}. Sus {tests} pruebas no dicen lo mismo.",
    },
)
