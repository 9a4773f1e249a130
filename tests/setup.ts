// Shuts the network for every test: only loopback may be reached, and a test that needs more must fail.
import nock from 'nock'

nock.disableNetConnect()
nock.enableNetConnect(/^(127\.0\.0\.1|localhost|\[::1\])(:\d+)?$/)
