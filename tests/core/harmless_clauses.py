"""What one mark of long ago, or one denial, covers in several clauses: harmless, each."""

STILL_HARMLESS = {
    "en": (
        "I slipped on ice and I broke my hip in 2019, all done today",
        "today was hard, I broke my hip in 2015, did them all",
        "my sister fell and broke her wrist, I did mine",
        "no dizziness, no falls and no numbness, all done",
        "read a book about a woman who fell, did mine after",
    ),
    "es": (
        "el año pasado me caí y me fracturé la cadera, hoy hice todo",
        "mi hermana se cayó y se quebró el brazo, yo hice todo",
        "ni caídas ni mareos, todo hecho",
        "me caí hace como 5 años, hoy hice todo",
    ),
}
