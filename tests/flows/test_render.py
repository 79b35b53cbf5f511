"""A reminder's words: what a crowd shares is word for word what each would have had alone."""

from itertools import product

import pytest

from reminders.core.program_data import STARTER_PROGRAMS
from reminders.core.program_json import to_json
from reminders.flows import render
from reminders.flows.claiming import scene_of
from reminders.flows.gate import read_facts
from reminders.store.tables import ClientProgram
from tests.clinic import World

LINKS = render.Links("http://127.0.0.1:8000", ("a-secret-of-these-tests",))
# Letters that texts swap or keep, and a name of many words.
NAMES = ("Ana Ruiz", "José Muñoz", "Zoë D’Arcy", "Mary-Lou van der Berg")


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("code", sorted(STARTER_PROGRAMS))
def test_the_words_that_a_crowd_shares_are_those_that_each_would_have_alone(
    world: World, language: str, code: str
) -> None:
    world.enrol()
    world.pass_time(days=2)
    world.plan()
    with world.db.begin() as tx:
        row = next(one for one in world.queued("reminder"))
        program = tx.get_one(ClientProgram, 1)
        program.body, row.language = to_json(STARTER_PROGRAMS[code]), language
        tx.flush()
        scene = scene_of(row, read_facts(tx, [row], world.now))
        assert scene.session is not None
        assert scene.client is not None
        seen = 0
        for name, is_easy, compact in product(NAMES, (False, True), (False, True)):
            scene.client.name, scene.client.compact_doses, scene.session.is_easy = name, compact, is_easy
            render.show_session(scene, language)
            shared = render.shared_body(world.sender.texts, scene, row)
            alone = render.reminder_body(world.sender.texts, scene, row, render.values(scene, row, LINKS, world.now))
            if shared is not None:
                assert shared == alone
                seen += 1
        assert seen, "some reminder must be short enough to be shared"
        tx.expunge_all()
