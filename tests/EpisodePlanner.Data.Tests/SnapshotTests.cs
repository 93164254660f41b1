using EpisodePlanner.Planning;

namespace EpisodePlanner.Data.Tests;

public class SnapshotTests
{
    [Fact]
    public void VersionOf_WhatDoesNotExist()
    {
        var workshop = new Workshop { Format = 1, Name = "Shed", Zone = "Europe/Dublin" };
        var snapshot = new Snapshot(new Id("w"), workshop, 3, default, [new(Aggregate.About, 2)]);

        Assert.Equal(2, snapshot.VersionOf(Aggregate.About));
        Assert.Null(snapshot.VersionOf(Aggregate.Accepted));
    }
}
