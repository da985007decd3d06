"""From volts to travel, motion, crossings and break-up; measurement and its uncertainty."""
