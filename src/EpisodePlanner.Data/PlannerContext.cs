using System.Text.Json;
using EpisodePlanner.Data.Rows;
using EpisodePlanner.Data.Rows.Mapping;
using Microsoft.EntityFrameworkCore;

namespace EpisodePlanner.Data;

/// <summary>The tables. What is read is not tracked; every write says itself what it changes.</summary>
public abstract class PlannerContext : DbContext
{
    /// <summary>Over a database of a provider.</summary>
    protected PlannerContext(DbContextOptions options)
        : base(options) => ChangeTracker.AutoDetectChangesEnabled = false;

    internal DbSet<WorkshopRow> Workshops => Set<WorkshopRow>();

    internal DbSet<ThingRow> Things => Set<ThingRow>();

    internal DbSet<LogRow> Log => Set<LogRow>();

    internal DbSet<UploadRow> Uploads => Set<UploadRow>();

    internal DbSet<ToldDateRow> ToldDates => Set<ToldDateRow>();

    internal DbSet<ChangeRow> Changes => Set<ChangeRow>();

    internal DbSet<SupposeRow> Supposes => Set<SupposeRow>();

    internal DbSet<RequestKeyRow> RequestKeys => Set<RequestKeyRow>();

    /// <summary>The column type in which the provider keeps JSON.</summary>
    protected abstract string JsonColumn { get; }

    /// <inheritdoc/>
    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        modelBuilder.ApplyConfiguration(new WorkshopMapping());
        modelBuilder.ApplyConfiguration(new ThingMapping(JsonColumn));
        modelBuilder.ApplyConfiguration(new LogMapping());
        modelBuilder.ApplyConfiguration(new UploadMapping());
        modelBuilder.ApplyConfiguration(new ToldDateMapping());
        modelBuilder.ApplyConfiguration(new ChangeMapping(JsonColumn));
        modelBuilder.ApplyConfiguration(new SupposeMapping(JsonColumn));
        modelBuilder.ApplyConfiguration(new RequestKeyMapping());
        foreach (var property in modelBuilder.Model.GetEntityTypes().SelectMany(type => type.GetProperties()))
        {
            property.SetColumnName(JsonNamingPolicy.SnakeCaseLower.ConvertName(property.Name));
        }
    }
}
