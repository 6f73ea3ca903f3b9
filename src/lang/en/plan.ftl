# A plan: its reasons, notes, changes and cautions, as they stand in plan.json.
