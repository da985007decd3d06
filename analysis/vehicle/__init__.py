"""What a vehicle does to its height sensor: travel as millimetres, heights that it rests at, roads."""
