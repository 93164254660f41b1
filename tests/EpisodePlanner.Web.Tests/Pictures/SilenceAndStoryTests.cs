using EpisodePlanner.Planning;
using EpisodePlanner.Web.Pictures;
using NodaTime;

namespace EpisodePlanner.Web.Tests.Pictures;

public sealed class SilenceAndStoryTests
{
    private static readonly Plan Plan = SamplePlans.Demo;

    [Fact]
    public void Silence_TellsTheDaysOverOfEachSilenceThatEndsInView()
    {
        var view = SilenceView.Around(Plan, 26, 1_120);
        var words = SilencePicture.Draw(Plan, view, "p").Root.Descendants()
            .Where(text => text.Attribute("class")?.Value == "p-over-words").Select(text => text.Value).ToList();
        var expected = Plan.Series.Where(o => o.State == SeriesState.Active).Append(Plan.Channel)
            .Where(outlook => outlook.Promise.LongestSilenceDays is not null)
            .SelectMany(outlook => outlook.Forecast.Where(s => s.To is { } to && to <= view.LastDay)
                .Select(s => s.Days - outlook.Promise.LongestSilenceDays!.Value))
            .Where(over => over > 0).Select(over => $"{over} over");

        Assert.Superset(expected.ToHashSet(), words.ToHashSet());
    }

    [Fact]
    public void Silence_HasADotForEveryUploadInView()
    {
        var view = SilenceView.Around(Plan, 26, 1_120);
        var drawn = SilencePicture.Draw(Plan, view, "p").Root.Descendants().Count(shape => shape.Name.LocalName == "circle");
        var ends = Plan.Series.Append(Plan.Channel)
            .Sum(o => o.Past.Concat(o.Forecast).Where(s => s.To is { } to && to >= view.FirstDay && to <= view.LastDay)
                .DistinctBy(s => s.To).Count());

        Assert.Equal(ends, drawn);
    }

    [Fact]
    public void Story_ShowsEveryMilestoneOnce()
    {
        foreach (var series in Plan.Request.Workshop.Series)
        {
            Assert.Equal(series.Milestones, StoryLayer.Of(Plan, series).Select(layer => layer.Milestone));
        }
    }

    [Fact]
    public void Story_IsSolidOnlyWhereNothingIsLeftToDo()
    {
        var workshop = Plan.Request.Workshop;
        var left = Plan.Stages.Where(s => !s.Key.IsTail).Select(s => workshop.Tasks.Find(s.Key.Task)!.Milestone).ToHashSet();

        Assert.All(
            workshop.Series.SelectMany(series => StoryLayer.Of(Plan, series)),
            layer => Assert.Equal(!left.Contains(layer.Milestone.Id), layer.IsDone));
    }

    [Fact]
    public void Story_NamesTheDateOfEveryEpisodeInIt()
    {
        foreach (var series in Plan.Request.Workshop.Series)
        {
            var ends = StoryLayer.Of(Plan, series).Where(layer => layer.EndsEpisode && !layer.IsOut).Select(layer => layer.Date);
            var planned = Plan.Episodes.Where(e => e.Series == series.Id && e.Milestones.Count > 0).Select(e => e.Date);
            Assert.Equal(planned.Order(Comparer<LocalDate?>.Default), ends.Order(Comparer<LocalDate?>.Default));
        }
    }
}
