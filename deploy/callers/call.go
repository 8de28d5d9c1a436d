// Asks the service through a client that was made of its contract; ends badly where something is lost on the way.
package main

import (
	"bytes"
	"context"
	"encoding/json"
	"io"
	"log"
	"net/http"
	"os"
	"reflect"

	"example.invalid/clients/wayside"
)

var url, examples = os.Args[1], os.Args[2]

func main() {
	client, err := wayside.NewClientWithResponses(url)
	must(err)
	ctx := context.Background()

	var budget wayside.EnergyBudgetRequest
	asked := example("energy-budget", &budget)
	day, err := client.EnergyBudgetWithResponse(ctx, nil, budget)
	must(err)
	same("energy-budget", day.JSON200, raw("energy-budget", asked))

	var wanted wayside.RecommendationRequest
	asked = example("recommendation", &wanted)
	system, err := client.RecommendationWithResponse(ctx, nil, wanted)
	must(err)
	same("recommendation", system.JSON200, raw("recommendation", asked))

	watts, hours := 45.0, 25.0
	fridge := wayside.Load{Name: "fridge", PowerW: &watts, HoursPerDay: &hours}
	refused, err := client.EnergyBudgetWithResponse(ctx, nil, wayside.EnergyBudgetRequest{Loads: []wayside.Load{fridge}})
	must(err)
	fault := (*refused.ApplicationproblemJSON422.Errors)[0]
	if fault.Code != "out-of-range" || *fault.Maximum != 24 {
		log.Fatalf("the problem is not what came: %+v", fault)
	}
}

// Reads an example into the client's own type, which must hold all of it.
func example(name string, into any) []byte {
	text, err := os.ReadFile(examples + "/" + name + ".request.json")
	must(err)
	must(json.Unmarshal(text, into))
	same(name+" request", into, text)
	return text
}

func raw(operation string, body []byte) []byte {
	answer, err := http.Post(url+"/v1/"+operation, "application/json", bytes.NewReader(body))
	must(err)
	defer answer.Body.Close()
	text, err := io.ReadAll(answer.Body)
	must(err)
	return text
}

func same(what string, typed any, text []byte) {
	written, err := json.Marshal(typed)
	must(err)
	var one, other any
	must(json.Unmarshal(written, &one))
	must(json.Unmarshal(text, &other))
	if !reflect.DeepEqual(one, other) {
		log.Fatalf("%s: what was read is not what came", what)
	}
}

func must(err error) {
	if err != nil {
		log.Fatal(err)
	}
}
