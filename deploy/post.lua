-- wrk: posts the file named in BODY as JSON.
local file = assert(io.open(os.getenv("BODY"), "rb"))
wrk.method = "POST"
wrk.body = file:read("*a")
wrk.headers["Content-Type"] = "application/json"
file:close()
