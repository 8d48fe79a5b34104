import saltwright = require('saltwright')
import topic = require('saltwright/quantity')

export const crop: topic.Quantity<'mass'> = saltwright.quantity('18.632 g').minus(topic.quantity('11.204 g'))
