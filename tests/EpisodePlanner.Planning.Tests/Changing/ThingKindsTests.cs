using System.Text;
using EpisodePlanner.Planning.Files;
using static EpisodePlanner.Planning.Tests.Sample;

namespace EpisodePlanner.Planning.Tests;

public class ThingKindsTests
{
    public static TheoryData<string> Names => [.. ThingKinds.All.Select(kind => kind.Name)];

    [Fact]
    public void All_AreTheSetsOfAWorkshop_InTheOrderOfTheFile()
    {
        var sets = typeof(Workshop).GetProperties()
            .Where(property => property.PropertyType.IsGenericType
                && property.PropertyType.GetGenericTypeDefinition() == typeof(Keyed<>))
            .OrderBy(property => property.MetadataToken)
            .Select(property => (char.ToLowerInvariant(property.Name[0]) + property.Name[1..], property.PropertyType.GetGenericArguments()[0]));

        Assert.Equal(sets, ThingKinds.All.Select(kind => (kind.Name, kind.Type)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Kind_FindsPutsAndRemoves(string name)
    {
        var kind = ThingKinds.Find(name)!;
        var thing = kind.All(Sound).First();
        var without = kind.With(Sound, kind.All(Sound).Where(other => other.Id != thing.Id));

        Assert.Same(thing, kind.Find(Sound, thing.Id));
        Assert.Null(kind.Find(without, thing.Id));
        Assert.Equal(kind.All(Sound).Count - 1, kind.All(without).Count);
        Assert.Equal(Sound, kind.With(without, kind.All(Sound)));
        Assert.Equal([kind.Of(thing.Id)], kind.Put(thing).Touches());
        Assert.Equal([kind.Of(thing.Id)], kind.Remove(thing.Id).Touches());
        Assert.Equal($"{name}/{thing.Id}", kind.Of(thing.Id).ToString());
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Write_ReadsBackEqual_WithoutASpaceOrALineFeed(string name)
    {
        var kind = ThingKinds.Find(name)!;
        foreach (var thing in kind.All(WorkshopFile.Order(Sound)))
        {
            var bytes = kind.Write(thing);

            Assert.DoesNotContain('\n', Encoding.UTF8.GetString(bytes));
            Assert.Equal(thing, kind.Read(bytes, out var reasons));
            Assert.Equal(thing, kind.ReadStored(bytes, out _));
            Assert.Empty(reasons);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void ReadStored_OfDamagedBytes_TellsWhere(string name)
    {
        var kind = ThingKinds.Find(name)!;

        Assert.Null(kind.ReadStored("{\"id\":7"u8.ToArray(), out var cut));
        Assert.Null(kind.ReadStored("{\"id\":7,\"ghost\":1}"u8.ToArray(), out var wrong));

        Assert.Equal(["$"], cut.Select(reason => reason.Where));
        Assert.Superset(new HashSet<string> { "$.id", "$.ghost" }, wrong.Select(reason => reason.Where).ToHashSet());
    }

    [Fact]
    public void Find_UnknownName() => Assert.Null(ThingKinds.Find("ghosts"));
}
