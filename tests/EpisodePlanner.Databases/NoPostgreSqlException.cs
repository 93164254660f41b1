namespace EpisodePlanner.Databases;

/// <summary>Says why no PostgreSQL is to be had on this machine.</summary>
public sealed class NoPostgreSqlException(string message) : Exception(message);
