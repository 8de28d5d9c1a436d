"""Asks the service through a client that was made of its contract; ends badly where something is lost on the way."""

import json
import sys
import urllib.request
from pathlib import Path

from wayside_client import Client
from wayside_client.api.sizing import energy_budget, recommendation
from wayside_client.models import EnergyBudgetRequest, Load, Problem, RecommendationRequest

URL, EXAMPLES = sys.argv[1], Path(sys.argv[2])
CLIENT = Client(base_url=URL, timeout=60.0)


def raw(operation, body):
    headers = {"Content-Type": "application/json"}
    asked = urllib.request.Request(f"{URL}/v1/{operation}", json.dumps(body).encode(), headers)
    with urllib.request.urlopen(asked) as answer:
        return json.load(answer)


def carries(operation, module, request):
    asked = json.loads((EXAMPLES / f"{operation}.request.json").read_text())
    body = request.from_dict(asked)
    assert body.to_dict() == asked, f"{operation}: the request is not what was read"
    answer = module.sync(client=CLIENT, body=body)
    assert answer.to_dict() == raw(operation, asked), f"{operation}: the answer is not what came"


carries("energy-budget", energy_budget, EnergyBudgetRequest)
carries("recommendation", recommendation, RecommendationRequest)

refused = energy_budget.sync(
    client=CLIENT, body=EnergyBudgetRequest(loads=[Load(name="fridge", power_w=45.0, hours_per_day=25.0)])
)
assert isinstance(refused, Problem), refused
assert (refused.errors[0].code, refused.errors[0].maximum) == ("out-of-range", 24), refused.errors
